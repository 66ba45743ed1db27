/** Shows what can be pasted. Invented: there is no such land and no such deed. */
export const exampleDeed = `BEGINNING at an iron pin on the north line of Larch Lane;
thence N 4°10' E, 150.00 feet to a stake;
thence S 85°50' E, 60.00 feet to the beginning of a curve to the right having a radius of 40.00 feet;
thence along said curve, tangent to the last course, through a central angle of 90°00', an arc length of 62.83 feet;
thence S 4°10' W, 110.00 feet to an iron pin;
being part of Lot 12 as it was laid out
thence N 85°50' W, 100.02 feet to the POINT OF BEGINNING, containing 0.34 acres.`;
