/**
 * A deed of our own invention: no such land, names or records. It closes to about 1:9,000 and has a
 * curve, chains, rods, a distance said again in metres, and lines that are no calls.
 */
export const quarryDeed = `ALL that certain lot in the Town of Ardmere, being Lot 7 of a plan of lots:
BEGINNING at an iron pin on the north line of Quarry Lane; thence
North 26°10' East, 285.10 feet (86.90 m) to a stake;
thence S 75°25'00" E, 9 chains 16.5 links to a 5/8 inch rebar, 20 feet from a barn;
the clerk has smudged this line here
thence along a curve to the right having a radius of 125.00 feet, a central
angle of 34°12'20", an arc length of 74.63 feet, chord bearing S 58°18'50" E 73.5 feet;
thence South 15 degrees 30 minutes West, 39 1/2 rods to a stone;
thence N 1°42' W, 203.00 feet; thence N 58°45' W, 694.50 feet
to the POINT OF BEGINNING, containing 6.43 acres, more or less.
Subject to a 20 foot easement.`;

/** Ours as well: two ties from a point of commencing, then a square of 100 ft, then an exception. */
export const tiedDeed = `COMMENCING at a stone; thence due south 50.00 feet; thence S 45° E 70.71 feet
to an iron pin and the TRUE POINT OF BEGINNING; thence due east 100.00 feet to a nail;
thence due south 100.00 feet; thence due west 100.00 feet; thence due north 100.00 feet
to the TRUE POINT OF BEGINNING. EXCEPTING the following: thence due east 5.00 feet.`;
