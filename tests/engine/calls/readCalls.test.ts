import { describe, expect, it } from 'vitest';
import { readCalls } from '../../../src/engine/calls/readCalls.ts';
import { quarryDeed, tiedDeed } from './deeds.ts';
import { callsOf, said, walked } from './read.ts';

const nothing = 'words no bearing and no distance: nothing in it to draw';
const both = `expected both, such as N 26°10' E 285.10 feet`;

describe('a list of calls', () => {
  it('[J1] each line is a course or is told, with its number', () => {
    expect(
      said(`Lot 5\nN26°10'E 285.10\n\nS 75-25 E 610.45 to a stake\nsmudge\n3) az 195°30' 720.48`),
    ).toEqual([
      `1 ${nothing}`,
      `2 lot N 26°10'00" E 285.10`,
      `4 lot S 75°25'00" E 610.45 to stake`,
      `5 ${nothing}`,
      `6 lot S 15°30'00" W 720.48`,
    ]);
  });

  it.each([
    ['N 26 E', `has a bearing and no distance: ${both}`],
    ['100.00 feet', `has a distance and no bearing: ${both}`],
    ['100.00', `has a distance and no bearing: ${both}`],
    ['northerly 100 feet', `has a distance and no bearing, “northerly” is no angle: ${both}`],
    [`N 26°10' 285.10`, `“N 26°10' 285.10” has no east or west`],
    ['N 100', '“N 100” has no east or west'],
    [`N 26°l0' E 285.10`, `“N 26°l0' E” is not a bearing`],
    ['N 26 E 285.1O feet', '“285.1O feet” is not a distance'],
    ['N 126 E 100', '“126” in a bearing is over 90°'],
    ['N 26 E 0', 'has a distance of nothing'],
    ['N 26 E 60000', 'has a distance of over ten miles'],
    [`right 92°10' angle, 100 feet`, 'tells an angle that is turned from the course before'],
    ['curve right, radius 125', 'tells too little of its curve'],
    ['curve, radius 125, arc 50, chord N 20 E', 'does not say to which hand'],
    ['curve left, radius 125, arc 50', 'begins where no course before it was read'],
    ['non-tangent curve left, radius 125, arc 50', 'is not tangent to the course before'],
  ])('[J2] %s is not understood: one line says why', (text, reason) => {
    const [line = '', ...more] = said(text);
    expect(line).toMatch(/^1 fault [^\n]+$/);
    expect(line).toContain(reason);
    expect(more).toEqual([]);
  });

  it('[J2] a side that was not understood is not the course before a curve', () => {
    expect(said('N 26 E 100\nN 26 W\ncurve left radius 50 arc 20')[2]).toContain(
      'begins where no course before it was read',
    );
  });

  it('[J1] a bare distance is in the unit asked for', () => {
    const chains = readCalls('N 26 E 4.25', 'chains');
    expect(chains.ok && chains.value.courses[0]?.length).toBeCloseTo(4.25 * 792, 9);
  });
});

describe('a deed that is pasted whole', () => {
  it('[J1] [J3] is read thence by thence, and every other line of it is told', () => {
    expect(said(quarryDeed)).toEqual(
      [
        `1 ${nothing}`,
        '2 start iron pin on the north line of Quarry Lane',
        `2 lot N 26°10'00" E 285.10 to stake`,
        // 9.165 chains of 66 ft
        `4 lot S 75°25'00" E 604.89 to 5/8 inch rebar | also tells “20 feet”: not drawn`,
        `5 ${nothing}`,
        `6 lot S 58°18'50" E 73.52 right R 125.00 L 74.62`,
        // 39.5 rods of 16.5 ft
        `8 lot S 15°30'00" W 651.75 to stone`,
        `9 lot N 1°42'00" W 203.00`,
        `9 lot N 58°45'00" W 694.50`,
        'area 280090.80',
        `11 words has a distance and no bearing: ${both}`,
      ].map((line) => (line.startsWith('area') ? `10 ${line}` : line)),
    );
    const calls = callsOf(quarryDeed);
    expect(calls).toMatchObject({
      start: 'iron pin on the north line of Quarry Lane',
      ends: 'at the beginning',
      ties: [],
    });
    expect((calls.area ?? NaN) / 144 / 43_560).toBeCloseTo(6.43, 9);
  });

  it('[J3] ties come to the point of beginning and are no sides; what follows the lot is not drawn', () => {
    const calls = callsOf(tiedDeed);
    expect(calls.ties.length).toBe(2);
    expect(calls.courses.map(({ length }) => length / 12)).toEqual([100, 100, 100, 100]);
    expect(calls.start).toBe('iron pin');
    expect(walked(tiedDeed).closes).toBe('exactly');
    expect(said(tiedDeed).at(-1)).toBe(
      '4 after due east 5.00 | comes after the lot has closed: not drawn; another lot is pasted by itself',
    );
  });

  it('[J3] a deed that commences where it ends has no ties', () => {
    const calls = callsOf(
      'Commencing at a stake; thence N 90 E 100 feet; thence N 0 E 100 feet; thence back to the place of beginning S 45 W 141.42 feet to the place of beginning',
    );
    expect([calls.ties.length, calls.courses.length]).toEqual([0, 3]);
  });

  it('[J3] old deeds run on without thence', () => {
    expect(
      said('BEGINNING at a stone and running N 26 E 16 1/2 rods to a stake; thence N 100 feet'),
    ).toEqual(['1 start stone', `1 lot N 26°00'00" E 272.25 to stake`, '1 lot due north 100.00']);
  });

  it('[J3] courses of one thence are cut line by line', () => {
    expect(
      said(
        "THENCE the following three courses and distances:\n1) N 26°10' E 285.10 feet\n2) S 75°25' E 610.45 feet;\nthence due west 5 feet to the\nPOINT OF BEGINNING",
      ),
    ).toEqual([
      `1 ${nothing}`,
      `2 lot N 26°10'00" E 285.10`,
      `3 lot S 75°25'00" E 610.45`,
      '4 lot due west 5.00',
    ]);
  });

  it('[J1] what stands beside a course is told: passing distances, a second bearing, another unit', () => {
    expect(
      said(
        'thence S 20 E passing a pin at 100 feet, in all 300.5 feet to a post; thence due west 3 feet',
      )[0],
    ).toBe(`1 lot S 20°00'00" E 300.50 to post | also tells “100 feet”: not drawn`);
    expect(
      said(
        'thence N 26 E 285.10 feet to a stake bearing S 20° W from an oak; thence due west 3 feet',
      )[0],
    ).toContain('also tells “S 20° W”: not drawn');
    expect(said('thence N 26 E 285.10 feet (68.9 m); thence due west 3 feet')[0]).toContain(
      'also tells “68.9 m”: not drawn',
    );
  });

  it('[J2] a bearing that is misspelt is not taken from what stands after it', () => {
    expect(
      said(`thence N 26°l0' E 285.10 feet to a pin S 20 W of an oak; thence due west 3 feet`)[0],
    ).toContain(`1 fault “N 26°l0' E” is not a bearing`);
  });
});

describe('how deeds are written', () => {
  // all ours, of no place
  it.each([
    [
      `Thence S. 12° 30' W. 110.25 ft. to the Northerly line of Elm Street`,
      `S 12°30'00" W 110.25 to Northerly line of Elm Street`,
    ],
    [
      'thence North 26 degrees 10 minutes East (assumed bearing) along the east line of Lot 4 a distance of 660.00 feet',
      `N 26°10'00" E 660.00`,
    ],
    ['Then N 10° W 32 poles to a white oak', `N 10°00'00" W 528.00 to white oak`],
    ['TH S 10 E 32 p. to a stake', `S 10°00'00" E 528.00 to stake`],
    [`thence S 5°15' W two hundred twelve and 50/100 (212.50) feet`, `S 5°15'00" W 212.50`],
    ['thence North along the West line of said lot 100 feet', 'due north 100.00'],
    [`Course: South 80°00'00" East, Distance: 50.00`, `S 80°00'00" E 50.00`],
    [`1.\tN45°00'00"E\t100.00`, `N 45°00'00" E 100.00`],
  ])('[J3] %s', (text, course) => {
    expect(said(text)).toEqual([`1 lot ${course}`]);
  });

  it.each([
    // an angle or a distance in words is not taken for what stands beside it
    [
      "thence North twenty-six degrees East one hundred feet (100.00')",
      'has a distance and no bearing',
    ],
    ['thence N 26° E one hundred feet', 'has a bearing and no distance'],
    ['thence N 26° E 32 arpents to a stake', '“32 arpents” is in no unit that is read'],
    [
      "thence N 45° E along the line of the 50' street to a pin",
      "has a bearing and no distance, “50'” is the size of something",
    ],
    ['thence N 45° E 50 ft 6 to a pin', '“50 ft 6” ends without its unit'],
    ['thence 45° W 100 feet', '“45° W” has no north or south'],
    ['thence along the road 45° east 100 feet', '“45° east” has no north or south'],
    ['thence az 45° W 100 feet', 'names its way twice'],
    ['thence North by East 100 feet', 'has a distance and no bearing, “north by east” is no angle'],
    ['due north by east 100 feet', 'has a distance and no bearing, “north by east” is no angle'],
    ['thence North East 100 feet', 'has a distance and no bearing, “north east” is no angle'],
    ['North by East 1/2 East 100', '“North by East 1/2 East” is not a bearing'],
    ['Northeast 100', 'has a distance and no bearing, “northeast” is no angle'],
    ['thence along the North 100 feet of Lot 3', 'has a distance and no bearing'],
    ['thence N 45° E -100 feet', '“-100” is below zero'],
    ['thence 30° right 100 ft', 'tells an angle that is turned'],
    [
      'thence in a northerly direction 50 feet',
      'has a distance and no bearing, “northerly” is no angle',
    ],
    [
      'thence upstream along the creek to the East line of Lot 3',
      'has neither bearing nor distance',
    ],
  ])('[J2] %s', (text, reason) => {
    expect(said(text)).toEqual([expect.stringContaining(`1 fault ${reason}`)]);
  });

  it.each([
    ['thence with a 6 foot fence N 90° E 100.00', 'due east 100.00'],
    ["thence N 45° E along a 20' alley 100.00", `N 45°00'00" E 100.00`],
    ["thence N 45° E along a 20' alley 100 feet to an alley", `N 45°00'00" E 100.00`],
    ['thence along the east line of Lot 3 North 100', 'due north 100.00'],
    ['thence N 45° E 100.00 to a pin 20 feet from a barn', `N 45°00'00" E 100.00`],
    ['thence N 45° E passing a pin at 20 feet, 100 feet to a post', `N 45°00'00" E 100.00`],
    [
      'thence N 45° E parallel with and 20 feet north of the south line of Lot 3 100 feet',
      `N 45°00'00" E 100.00`,
    ],
    ['thence N 45° E along a 20 foot public ingress easement 100 feet', `N 45°00'00" E 100.00`],
    ['thence W 3 ft', 'due west 3.00'],
    ['thence N 45½° E 26 1/2', `N 45°30'00" E 26.50`],
    ['thence N 45° E 50 ft 6 1/2 in', `N 45°00'00" E 50.54`],
    // 12 chains of 66 ft and 34 links of 0.66 ft
    ['thence N 45° E 12 ch 34 li', `N 45°00'00" E 814.44`],
    ['thence N 45° E 12 ch 34 l to a stake', `N 45°00'00" E 814.44`],
    [`thence N 45° E 50'-6-1/2" to a pin`, `N 45°00'00" E 50.54`],
    ['thence N 45° E 1/4 mile', `N 45°00'00" E 1320.00`],
    ['thence N 45° E 2 furlongs', `N 45°00'00" E 1320.00`],
    ['thence tangent to said curve N 90° E 50', 'due east 50.00'],
  ])(
    '[J2] the way to go and how far are not taken for what stands beside them: %s',
    (text, course) => {
      expect(said(text)).toEqual([expect.stringContaining(`1 lot ${course}`)]);
    },
  );

  it('[J5] it is told what a rough figure, a vara and the size of a thing beside were read as', () => {
    const doubts = callsOf(
      "thence N 26° E 100±\nthence N 26° E 100 ft +/-\nthence N 26° E 30 varas\nthence N 26° E along a 20' alley 100.00\nthence N 26° E to a pin 20 feet from a barn",
    ).pieces.flatMap((piece) => piece.doubts);
    expect(doubts).toEqual([
      'tells its figures roughly: drawn as they stand',
      'tells its figures roughly: drawn as they stand',
      'tells varas: read as those of Texas, 33 1/3 in each',
      "also tells “20'”: not drawn",
      'has no distance but “20 feet”, which may be how far off something is',
    ]);
  });

  it('[J4] a degree of curve is no central angle, and a tangent of so many feet no arc', () => {
    const after = 'thence N 0 E 10 feet; thence along a ';
    // R = 5729.578 / 5 ft by the arc, 50 / sin 2.5° ft by the chord: “Degree of curvature”, Wikipedia
    const [arc, chord] = ["100 ft of arc: radius 1145.92'", "a chord of 100 ft: radius 1146.28'"];
    const taken = 'is taken as tangent to the course before';
    expect(said(`${after}5° curve to the right 200 feet`)[1]).toBe(
      `1 lot N 5°00'00" E 199.75 right R 1145.92 L 200.00 | is a 5°00'00" curve by ${arc}; not by ${chord} | ${taken}`,
    );
    expect(said(`${after}5° curve (chord definition) to the right 200 feet`)[1]).toContain(
      `right R 1146.28 L 200.00 | is a 5°00'00" curve by ${chord}; not by ${arc}`,
    );
    expect(said(`${after}5° curve to the right, radius 90 feet, arc 20 feet`)[1]).toContain(
      'right R 90.00 L 20.00 | is taken as tangent to the course before | also tells “5°”: not drawn',
    );
    // what turns a quarter is no degree of curve
    expect(said(`${after}90° curve to the right 200 feet`)[1]).toContain('tells too little');
    // T = R tan(delta / 2): 50 ft at a quarter turn is a radius of 50 ft
    const curve = callsOf(
      `${after}curve to the right with a tangent of 50 feet and a central angle of 90°`,
    ).courses[1]?.curve;
    expect(curve?.radius).toBeCloseTo(600, 6);
    const short = callsOf(`${after}curve to the right, delta 90°, T 50 feet`).courses[1]?.curve;
    expect(short?.radius).toBeCloseTo(600, 6);
  });

  it('[J3] the short words of an index of deeds begin and end calls too', () => {
    const short =
      "BEG AT NE COR LOT 4 TH S 89°30' W 100 FT TH N 0°30' W 50 FT TH N 89°30' E 100 FT TH S 0°30' E 50 FT TO POB";
    expect(said(short).length).toBe(5);
    expect(walked(short)).toMatchObject({ closes: 'exactly' });
    expect(callsOf('N 1 E 5\nS 1 W 5 to beginning')).toMatchObject({ ends: 'at the beginning' });
  });
});

describe('curves of deeds', () => {
  const after = (call: string): string => said(`thence due north 100 feet; ${call}`)[1] ?? '';

  it.each([
    // tangent to due north: the chord is turned by half the central angle
    [
      'thence along a tangent curve to the right with a radius of 100 feet, a central angle of 90°',
      `N 45°00'00" E 141.42 right R 100.00 L 157.08`,
    ],
    [
      'thence by a curve to the left, radius 100 feet and chord 100 feet, tangent to the last course',
      `N 30°00'00" W 100.00 left R 100.00 L 104.72`,
    ],
    [
      'thence along the arc of a 100.00 foot radius curve to the right, tangent length of 100.00 feet, tangent to the last course',
      `N 45°00'00" E 141.42 right R 100.00 L 157.08`,
    ],
    [
      'thence along a curve to the right; radius 100 feet; arc length 157.08 feet; chord bearing N 45 E 141.42 feet',
      `N 45°00'00" E 141.42 right R 100.00 L 157.08`,
    ],
    // the centre is due east of the start: it leaves due north
    [
      'thence along a non-tangent curve to the right, the radius point of which bears due east 100.00 feet, through a central angle of 90°00\'00"',
      `N 45°00'00" E 141.42 right R 100.00 L 157.08`,
    ],
    [
      'thence along a non-tangent curve concave easterly, to which a radial line bears due west, radius 100 feet, central angle 90°',
      `N 45°00'00" E 141.42 right R 100.00 L 157.08`,
    ],
    [
      `thence R=100.00' Δ=90°00'00" L=157.08' CB=N45°E right`,
      `N 45°00'00" E 141.42 right R 100.00 L 157.08`,
    ],
  ])('[J4] %s', (call, course) => {
    expect(after(call)).toBe(`1 lot ${course}`);
  });

  it('[J4] a curve that its course before speaks of takes its radius from there', () => {
    expect(
      said(
        'thence N 56°13\'49" E 100.00 feet to the beginning of a 160.00 foot radius curve to the right;\nthence along said curve, tangent to the last course, an arc length of 92.97 feet;\nthence due west 5 feet',
      )[1],
    ).toBe(`2 lot N 72°52'35" E 91.67 right R 160.00 L 92.97`);
  });

  it('[J5] a curve that the end of a side tells of and no side follows is told', () => {
    const doubts = (text: string) => callsOf(text).pieces.flatMap((piece) => piece.doubts);
    const ahead = 'thence North 100 feet to the beginning of a curve to the right, radius 40 feet;';
    const curve =
      'thence along said curve through a central angle of 90°, tangent to the last course;';
    expect(doubts(`${ahead} thence East 50 feet;`)).toContainEqual(
      expect.stringContaining('a curve that no side follows'),
    );
    expect(doubts(ahead)).toContainEqual(expect.stringContaining('a curve that no side follows'));
    expect(doubts(`${ahead} ${curve} thence East 50 feet;`)).not.toContainEqual(
      expect.stringContaining('a curve that no side follows'),
    );
  });

  it('[J5] what is taken for granted, or told twice and not alike, is told', () => {
    expect(
      after('thence along a curve to the left, radius 682.70 feet, a distance of 50.47 feet'),
    ).toBe(
      `1 lot N 2°07'04" W 50.46 left R 682.70 L 50.47 | is taken as tangent to the course before`,
    );
    expect(
      after(
        'thence along a curve to the right, radius 100 feet, central angle 90°, arc 175.08 feet, chord bears N 45 E',
      ),
    ).toContain(`the arc length is told as 175.08', the other figures make it 157.08'`);
    expect(
      after(
        'thence along a curve tangent to the last course to the right, radius 100 feet, central angle 90°, chord bears N 54 E',
      ),
    ).toContain(
      `its chord is drawn N 54°00'00" E, what else is told of it makes that N 45°00'00" E`,
    );
  });
});
