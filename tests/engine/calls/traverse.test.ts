import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Course } from '../../../src/engine/calls/course.ts';
import { traverse, type Traverse } from '../../../src/engine/calls/traverse.ts';
import { signedArea } from '../../../src/geometry/signedArea.ts';
import { trackPoints } from '../../../src/geometry/track.ts';
import { inches } from '../../../src/units/inches.ts';
import { radians } from '../../../src/units/radians.ts';
import { solveCurve } from '../../../src/engine/calls/solveCurve.ts';
import { walked } from './read.ts';

const feet = (length: number): number => length / 12;
const squareFeet = (area: number): number => area / 144;

const offOf = ({ misclosure: { lat, dep, length } }: Traverse): number[] =>
  [lat, dep, length].map(feet);

const lotOf = ({ lot }: Traverse) => {
  if (lot === null) throw new Error('the calls are open');
  return lot;
};

/** Purdue ASM 215, https://engineering.purdue.edu/~asm215/topics/travcalc.html */
const purdue = walked(
  `A N26°10'E 285.10\nB S75°25'E 610.45\nC S15°30'W 720.48\nD N1°42'W 203.00\nE N53°06'W 647.02`,
);

/** Mahun's open-access loop, https://jerrymahun.com/index.php/home/open-access/17-trav-comps/49-travcomps-chap-i?start=3 */
const mahun = walked(
  `S68°05'35"W 472.68\nN19°46'00"W 216.13\nN45°55'20"E 276.52\nS54°59'15"E 382.24`,
);

/** Four courses, https://justaaa.com/civil-engineering/19749-consider-a-closed-polygon-traverse-lengths-in */
const four = walked(
  `N22°36'40"W 314.02\nS60°39'24"W 264.49\nS38°46'10"E 213.50\nN88°22'58"E 217.69`,
);

/** Six courses that close badly, https://scribd.com/doc/279716815/Sample-Traverse-Computations */
const six = walked(
  `N5°30'E 495.85\nN46°02'E 850.62\nS67°38'E 855.45\nS12°25'E 1020.87\nS83°44'W 1117.26\nN55°09'W 660.08`,
);

/** A rectangle by double meridian distances, https://sites.google.com/view/survey2nd/dmd */
const rectangle = walked('N30°E 400\nS60°E 300\nS30°W 400\nN60°W 300');

describe('traverse', () => {
  it('[J6] Purdue: perimeter, misclosure and precision', () => {
    expect(feet(purdue.perimeter)).toBeCloseTo(2466.05, 9);
    // the page rounds each course to .01 before it adds: lat -0.71, dep +0.53, 0.89, 1:2771
    const published = [-0.71, 0.53, 0.89];
    offOf(purdue).forEach((off, n) =>
      expect(Math.abs(off - (published[n] ?? NaN))).toBeLessThan(0.02),
    );
    // exact arithmetic, recomputed by hand beside the page
    expect(offOf(purdue)).toEqual([
      expect.closeTo(-0.7043, 4),
      expect.closeTo(0.5332, 4),
      expect.closeTo(0.8833, 4),
    ]);
    expect(purdue.precision).toBeCloseTo(2792, 0);
  });

  it('[J7] Purdue: coordinates balanced by the compass rule, from (10000, 10000)', () => {
    const published = [
      [10000, 10000],
      [10255.96, 10125.66],
      [10102.44, 10716.31],
      [9408.37, 10523.62],
      [9611.34, 10517.55],
    ];
    const found = lotOf(purdue).corners.map(({ x, y }) => [10000 + feet(y), 10000 + feet(x)]);
    expect(found.length).toBe(published.length);
    found.flat().forEach((value, n) => {
      expect(Math.abs(value - (published.flat()[n] ?? NaN))).toBeLessThan(0.02);
    });
    // derived from the page's courses: 272,611 sq ft, 6.258 acres
    expect(squareFeet(lotOf(purdue).area)).toBeCloseTo(272_611, 0);
    expect(squareFeet(lotOf(purdue).area) / 43_560).toBeCloseTo(6.258, 3);
  });

  it('[J6] Mahun: closure +0.083, +0.075, 0.111 ft, 1:12,116', () => {
    const [lat = NaN, dep = NaN, length = NaN] = offOf(mahun);
    expect(Math.abs(lat - 0.083)).toBeLessThan(0.001);
    expect(Math.abs(dep - 0.075)).toBeLessThan(0.001);
    expect(length).toBeCloseTo(0.111, 3);
    expect(mahun.precision).toBeCloseTo(12_116, 0);
    expect(feet(mahun.perimeter)).toBeCloseTo(1347.57, 9);
  });

  it('[J8] Mahun: adjusted latitudes and departures, double meridian distances, products, area', () => {
    const { courses, area } = lotOf(mahun);
    const lats = [-176.386, 203.382, 192.34, -219.336];
    const deps = [-438.574, -73.105, 198.635, 313.044];
    const dmds = [-438.574, -950.253, -824.723, -313.044];
    const products = [77_358.3, -193_264.4, -158_627.2, 68_661.8];
    courses.forEach(({ lat, dep, dmd, doubleArea }, n) => {
      expect(Math.abs(feet(lat) - (lats[n] ?? NaN))).toBeLessThan(0.001);
      expect(Math.abs(feet(dep) - (deps[n] ?? NaN))).toBeLessThan(0.001);
      expect(Math.abs(feet(dmd) - (dmds[n] ?? NaN))).toBeLessThan(0.001);
      // the page multiplies figures rounded to .001
      expect(Math.abs(squareFeet(doubleArea) - (products[n] ?? NaN))).toBeLessThan(0.3);
    });
    expect(squareFeet(area)).toBeCloseTo(102_935.7, 1);
    expect(squareFeet(area) / 43_560).toBeCloseTo(2.363, 3);
  });

  it('[J6] four courses: 0.045 ft, 1:22,500', () => {
    expect(feet(four.misclosure.length)).toBeCloseTo(0.045, 3);
    expect(Math.abs((four.precision ?? NaN) - 22_500)).toBeLessThan(50);
    // derived: 59,764 sq ft
    expect(squareFeet(lotOf(four).area)).toBeCloseTo(59_764, 0);
  });

  it('[J6] six courses that close badly: +16.8171, +18.0737, 24.6876 ft, 1:200', () => {
    expect(offOf(six)).toEqual([
      expect.closeTo(16.8171, 4),
      expect.closeTo(18.0737, 4),
      expect.closeTo(24.6876, 4),
    ]);
    expect(six.closes).toBe('off');
    // the page rounds to 1:200
    expect(Math.abs((six.precision ?? NaN) - 200)).toBeLessThan(5);
  });

  it('[J8] six courses: 1,715,250.05 sq ft after the compass rule', () => {
    expect(squareFeet(lotOf(six).area)).toBeCloseTo(1_715_250.05, 2);
    expect(squareFeet(lotOf(six).area) / 43_560).toBeCloseTo(39.377, 3);
  });

  it('[J6] a rectangle closes exactly: no precision is told; 120,000 sq ft', () => {
    expect(rectangle).toMatchObject({ closes: 'exactly', precision: null });
    // 100 √2 is 141.421356...: off by less than a plat can say, and by more
    const right = (slope: string) => walked(`N 0 E 100\nN 90 E 100\nS 45 W ${slope}`);
    expect(right('141.4214')).toMatchObject({ closes: 'exactly', precision: null });
    expect(right('141.41')).toMatchObject({ closes: 'off' });
    expect(rectangle.misclosure.azimuth).toBeNull();
    expect(squareFeet(lotOf(rectangle).area)).toBeCloseTo(120_000, 6);
  });

  it('[J6] calls that do not come back are open, and nothing is balanced', () => {
    const open = walked('N 100\nS 60 E 80');
    expect(walked(`N 0 E 100\nN 90 E 80\nS 0 E 100`)).toMatchObject({ closes: 'open', lot: null });
    expect(open).toMatchObject({ closes: 'open', precision: null, lot: null });
    // three sides of a square, told to come back: an error and no open end
    const told = walked(
      `N 0 E 100; thence N 90 E 100; thence S 0 E 100 feet to the point of beginning`,
    );
    expect(told.closes).toBe('off');
    expect(traverse({ courses: [], ends: 'untold' })).toMatchObject({
      closes: 'open',
      points: [{ x: 0, y: 0 }],
    });
  });
});

const side = fc.record({
  azimuth: fc.double({ min: 0, max: 6.28, noNaN: true }),
  length: fc.double({ min: 12, max: 12_000, noNaN: true }),
  turn: fc.option(fc.double({ min: 0.05, max: 3, noNaN: true })),
  side: fc.constantFrom('left' as const, 'right' as const),
});

/** Courses round a lot, the last of them closing it but for an error; some are curved. */
const loops = fc
  .record({
    sides: fc.array(side, { minLength: 3, maxLength: 9 }),
    error: fc.double({ min: -20, max: 20, noNaN: true }),
  })
  .map(({ sides, error }): readonly Course[] => {
    const courses = sides.map(({ azimuth, length, turn, side: hand }): Course => {
      const curve =
        turn === null ? null : solveCurve({ chord: inches(length), delta: radians(turn) });
      return {
        azimuth: radians(azimuth),
        length: inches(length),
        curve: curve?.ok === true ? { side: hand, ...curve.value } : null,
        to: '',
      };
    });
    const lat = courses.reduce((all, one) => all + one.length * Math.cos(one.azimuth), error);
    const dep = courses.reduce((all, one) => all + one.length * Math.sin(one.azimuth), -error);
    const azimuth = radians((Math.atan2(-dep, -lat) + 2 * Math.PI) % (2 * Math.PI));
    return [...courses, { azimuth, length: inches(Math.hypot(lat, dep)), curve: null, to: '' }];
  })
  .filter((courses) => courses.every(({ length }) => length > 1));

const closed = (courses: readonly Course[]): Traverse =>
  traverse({ courses, ends: 'at the beginning' });

const near = (a: number, b: number, size: number): void => {
  expect(Math.abs(a - b)).toBeLessThan(1e-9 * size);
};

const alike = (a: Traverse, b: Traverse): void => {
  const size = a.perimeter + 1;
  near(a.misclosure.length, b.misclosure.length, size);
  near(lotOf(a).area, lotOf(b).area, size * size);
  near(a.perimeter, b.perimeter, size);
};

describe('traverse, whatever the calls', () => {
  it('[J9] turned, begun elsewhere or walked backwards: the same misclosure and area', () => {
    fc.assert(
      fc.property(
        loops,
        fc.double({ min: 0, max: 6, noNaN: true }),
        fc.nat(20),
        (courses, by, from) => {
          const plain = closed(courses);
          alike(
            plain,
            closed(courses.map((one) => ({ ...one, azimuth: radians(one.azimuth + by) }))),
          );
          const at = from % courses.length;
          alike(plain, closed([...courses.slice(at), ...courses.slice(0, at)]));
          alike(
            plain,
            closed(
              courses.toReversed().map(({ curve, ...one }) => ({
                ...one,
                azimuth: radians(one.azimuth + Math.PI),
                curve:
                  curve === null
                    ? null
                    : { ...curve, side: curve.side === 'left' ? 'right' : 'left' },
              })),
            ),
          );
        },
      ),
    );
  });

  it('[J7] balanced courses close, each corrected by its share of the length', () => {
    fc.assert(
      fc.property(loops, (courses) => {
        const told = closed(courses);
        const { courses: fixed } = lotOf(told);
        const total = courses.reduce((all, { length }) => all + length, 0);
        near(
          fixed.reduce((all, { lat }) => all + lat, 0),
          0,
          total,
        );
        near(
          fixed.reduce((all, { dep }) => all + dep, 0),
          0,
          total,
        );
        fixed.forEach(({ correction, curve }, n) => {
          const share = -(courses[n]?.length ?? NaN) / total;
          near(correction.lat, share * told.misclosure.lat, total);
          near(correction.dep, share * told.misclosure.dep, total);
          // a curve goes round by the angle that was told
          expect(curve?.delta).toBe(courses[n]?.curve?.delta);
        });
      }),
    );
  });

  it('[J8] the area is that of the corners, and of the curves drawn as short chords', () => {
    fc.assert(
      fc.property(loops, (courses) => {
        const { corners, courses: fixed, area } = lotOf(closed(courses));
        const size = closed(courses).perimeter ** 2;
        const doubled = fixed.reduce((all, { doubleArea }) => all + doubleArea, 0);
        near(doubled / 2, signedArea(corners), size);
        const drawn = fixed.flatMap(({ curve }, n) => {
          const [start = { x: 0, y: 0 }, end = { x: 0, y: 0 }] = [
            corners[n],
            corners[n + 1] ?? corners[0],
          ];
          // M = C/2 tan Δ/4; a curve to the right lies left of its chord
          const middle = curve === null ? 0 : (curve.chord / 2) * Math.tan(curve.delta / 4);
          const bow = curve?.side === 'right' ? middle : -middle;
          return trackPoints({ start, end, bow }, 1 / 1000).slice(0, -1);
        });
        const around = fixed.reduce((all, { curve, length }) => all + (curve?.arc ?? length), 0);
        expect(Math.abs(Math.abs(signedArea(drawn)) - area)).toBeLessThan(
          around / 1000 + 1e-9 * size,
        );
      }),
    );
  });

  it('[J8] two half circles are a circle, and a circle cut out of a square is taken off it', () => {
    const circle = walked(
      `curve right radius 50.00 delta 180°00'00" chord bearing N 0 E\ncurve right radius 50.00 delta 180°00'00" chord bearing S 0 E`,
    );
    expect(circle.closes).toBe('exactly');
    expect(squareFeet(lotOf(circle).area)).toBeCloseTo(Math.PI * 2500, 6);
    const bitten = walked(
      `due north 100\ndue east 100\ndue south 100\ncurve right radius 50 delta 180°00'00" chord bearing N 90 W`,
    );
    expect(squareFeet(lotOf(bitten).area)).toBeCloseTo(10_000 + (Math.PI * 2500) / 2, 6);
    const filled = walked(
      `due north 100\ndue east 100\ndue south 100\ncurve left radius 50 delta 180°00'00" chord bearing N 90 W`,
    );
    expect(squareFeet(lotOf(filled).area)).toBeCloseTo(10_000 - (Math.PI * 2500) / 2, 6);
  });

  it('[J8] the segment of a chord of 38.94 ft on a radius of 50 ft is 103.29 sq ft', () => {
    // Math Central, University of Regina, QQ.09.08/h/chris6.html, the bite out of an odd lot
    const bitten = walked(
      `due north 100\ndue east 38.94\ndue south 100\ncurve left radius 50 chord 38.94 chord bearing N 90 W`,
    );
    expect(squareFeet(lotOf(bitten).courses[3]?.segment ?? NaN)).toBeCloseTo(-103.29, 1);
  });
});
