import fc from 'fast-check';
import { Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { carried } from '../../src/geometry/carried.ts';
import { contains } from '../../src/geometry/contains.ts';
import { cutPolygon } from '../../src/geometry/cutPolygon.ts';
import { distance } from '../../src/geometry/distance.ts';
import { homographyOf, type FourTies } from '../../src/geometry/homographyOf.ts';
import { pictureMap } from '../../src/geometry/pictureMap.ts';
import { depthAt, projected } from '../../src/geometry/projective.ts';
import { shownGround } from '../../src/geometry/shownGround.ts';
import { signedArea } from '../../src/geometry/signedArea.ts';
import { similarityOf } from '../../src/geometry/similarityOf.ts';
import { straightPlan } from '../../src/geometry/straightPlan.ts';
import type { Tie } from '../../src/geometry/tie.ts';
import { tiesFault } from '../../src/geometry/tiesFault.ts';
import type { PicturePoint } from '../../src/geometry/point.ts';
import { rigidMotion, sitePoint, starPolygon } from './arbitraries.ts';

const pixel = fc.record({
  x: fc.integer({ min: 0, max: 8000 }),
  y: fc.integer({ min: 0, max: 6000 }),
});

/**
 * The linear system of the textbook (direct linear transformation with the last entry 1: R. Hartley,
 * A. Zisserman, Multiple View Geometry, 2nd ed. 2004, section 4.1; from memory), solved by ml-matrix.
 */
const byLinearSystem = (ties: FourTies): number[] => {
  const rows = ties.flatMap(({ u, v, x, y }) => [
    [u, v, 1, 0, 0, 0, -x * u, -x * v],
    [0, 0, 0, u, v, 1, -y * u, -y * v],
  ]);
  const told = ties.flatMap(({ x, y }) => [[x], [y]]);
  return [...solve(new Matrix(rows), new Matrix(told)).to1DArray(), 1];
};

/** A corner of a square of `side`, moved by up to a third of it: four of them make a convex piece. */
const nudge = fc.double({ min: -0.24, max: 0.24, noNaN: true });
const quad = (side: number) =>
  fc.array(fc.tuple(nudge, nudge), { minLength: 4, maxLength: 4 }).map((moves) =>
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ].map(([x = 0, y = 0], n) => ({
      x: side * (x + (moves[n]?.[0] ?? 0)),
      y: side * (y + (moves[n]?.[1] ?? 0)),
    })),
  );

/** Four ties as a camera over flat ground can have them: down on the picture is south on the ground. */
const seenSquare: fc.Arbitrary<FourTies> = fc
  .tuple(quad(3000), quad(600), sitePoint)
  .map(
    ([seen, shown, at]) =>
      seen.map((point, n) => ({
        u: point.x,
        v: point.y,
        x: at.x + (shown[n]?.x ?? 0),
        y: at.y - (shown[n]?.y ?? 0),
      })) as unknown as FourTies,
  )
  .filter((ties) => tiesFault(ties) === null);

describe('a picture tied at two points', () => {
  const two = fc
    .tuple(pixel, pixel, sitePoint, sitePoint)
    .filter(([a, b, c, d]) => distance(a, b) > 10 && distance(c, d) > 1)
    .map(
      ([a, b, c, d]) => [{ u: a.x, v: a.y, ...c } as Tie, { u: b.x, v: b.y, ...d } as Tie] as const,
    );

  it('[G40] both points lie where they are tied, and no length is stretched more than another', () => {
    fc.assert(
      fc.property(two, pixel, pixel, ([first, second], a, b) => {
        const map = similarityOf(first, second);
        for (const { u, v, x, y } of [first, second]) {
          expect(distance(projected(map, { x: u, y: v }), { x, y })).toBeLessThan(1e-6);
        }
        const scale = distance(first, second) / Math.hypot(second.u - first.u, second.v - first.v);
        const length = distance(projected(map, a), projected(map, b));
        expect(Math.abs(length - scale * distance(a, b))).toBeLessThan(1e-5 + 1e-9 * length);
      }),
    );
  });

  it('[G40] a picture is seen from above: clockwise on it is clockwise on the ground', () => {
    fc.assert(
      fc.property(two, starPolygon, ([first, second], star) => {
        const map = similarityOf(first, second);
        const seen = star.map(({ x, y }): PicturePoint => ({ x, y }));
        const shown = seen.map((point) => projected<'picture', 'site'>(map, point));
        // y down against y north: the signs of areas differ
        expect(Math.sign(signedArea(shown))).toBe(-Math.sign(signedArea(seen)));
      }),
    );
  });

  it('[G40] a picture 400 px wide tied 100 in across lies a quarter inch to the pixel, up is north', () => {
    const { toSite, toPicture } = pictureMap([
      { u: 0, v: 0, x: 50, y: 20 },
      { u: 400, v: 0, x: 150, y: 20 },
    ]);
    expect(toSite({ x: 200, y: 100 })).toEqual({ x: 100, y: -5 });
    expect(toPicture({ x: 100, y: -5 })).toEqual({ x: 200, y: 100 });
  });
});

describe('a picture straightened by four points', () => {
  it('[G41] is mapped as the linear system of the textbook has it', () => {
    fc.assert(
      fc.property(seenSquare, (ties) => {
        // about the first tie, else the system of the other library loses digits
        const [{ x, y }] = ties;
        const near = ties.map((tie) => ({ ...tie, x: tie.x - x, y: tie.y - y }));
        const theirs = byLinearSystem(near as unknown as FourTies);
        const ours = homographyOf(ties);
        const point = { x: 1500, y: 1200 };
        const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = theirs;
        const depth = g * point.x + h * point.y + 1;
        const there = {
          x: x + (a * point.x + b * point.y + c) / depth,
          y: y + (d * point.x + e * point.y + f) / depth,
        };
        expect(distance(projected(ours, point), there)).toBeLessThan(1e-5);
      }),
      { numRuns: 500 },
    );
  });

  it('[G41] its four points lie where they are tied, straight lines stay straight, and back is the way it came', () => {
    fc.assert(
      fc.property(seenSquare, fc.double({ min: 0, max: 1, noNaN: true }), (ties, share) => {
        const { toSite, toPicture } = pictureMap(ties);
        for (const { u, v, x, y } of ties) {
          expect(distance(toSite({ x: u, y: v }), { x, y })).toBeLessThan(1e-6);
          expect(distance(toPicture({ x, y }), { x: u, y: v })).toBeLessThan(1e-4);
        }
        const [a, b] = [ties[0], ties[2]];
        const on = toSite({ x: a.u + share * (b.u - a.u), y: a.v + share * (b.v - a.v) });
        const off = (b.x - a.x) * (on.y - a.y) - (b.y - a.y) * (on.x - a.x);
        expect(Math.abs(off) / distance(a, b)).toBeLessThan(1e-5);
      }),
    );
  });

  it('[G41] of a square that nobody looked at aslant it is the similarity', () => {
    const ties: FourTies = [
      { u: 10, v: 10, x: 0, y: 0 },
      { u: 110, v: 10, x: 50, y: 0 },
      { u: 110, v: 110, x: 50, y: -50 },
      { u: 10, v: 110, x: 0, y: -50 },
    ];
    const flat = similarityOf(ties[0], ties[2]);
    homographyOf(ties).forEach((value, n) => expect(value).toBeCloseTo(flat[n] ?? NaN, 9));
  });

  it('[G41] a court of 60 ft by 120 ft seen from its end comes out as that', () => {
    // a pinhole camera over the middle of the near side, looking down at it: by hand
    const seen = (x: number, y: number) => {
      const [back, high, focal] = [300, 200, 1000];
      return { u: 2000 + (focal * x) / (back + y), v: 500 + (focal * high) / (back + y), x, y };
    };
    const ties = [seen(-360, 0), seen(360, 0), seen(360, 1440), seen(-360, 1440)];
    expect(tiesFault(ties)).toBeNull();
    const { toSite } = pictureMap(ties);
    const middle = seen(0, 720);
    const found = toSite({ x: middle.u, y: middle.v });
    expect(found.x).toBeCloseTo(0, 6);
    expect(found.y).toBeCloseTo(720, 6);
    // the horizon is where v is 500: nothing is shown there or beyond
    const shown = shownGround({ width: 4000, height: 3000, ties });
    expect(shown.length).toBeGreaterThanOrEqual(4);
    expect(contains(shown, { x: 0, y: 720 })).toBe(true);
    for (const { x, y } of shown) {
      expect(y).toBeGreaterThan(-300);
      expect(y).toBeLessThanOrEqual(1440 + 2 * 1440 + 1e-6);
      expect(Math.abs(x)).toBeLessThanOrEqual(360 + 2 * 1440 + 1e-6);
    }
  });
});

describe('ties at fault', () => {
  const tie = (u: number, v: number, x: number, y: number): Tie => ({ u, v, x, y });
  const square = [tie(0, 0, 0, 0), tie(100, 0, 50, 0), tie(100, 100, 50, -50), tie(0, 100, 0, -50)];
  const changed = (n: number, to: Partial<Tie>): Tie[] =>
    square.map((one, i) => (i === n ? { ...one, ...to } : one));

  it.each([
    [square.slice(0, 3), 'expected two points or four, found 3'],
    [[tie(5, 5, 0, 0), tie(5, 6, 9, 9)], 'two of the points are on one spot of the picture'],
    [[tie(5, 5, 4, 4), tie(50, 6, 4, 4)], 'two of the points are on one spot of the ground'],
    [changed(3, { u: 1, v: 0 }), 'two of the points are on one spot of the picture'],
    [changed(3, { u: 50, v: 0 }), 'three of the points are in a row on the picture'],
    [changed(3, { x: 25, y: 0.1 }), 'three of the points are in a row on the ground'],
    [
      [...square.slice(0, 2), tie(100, 100, 0, -50), tie(0, 100, 50, -50)],
      'the four points do not go round the same way on the picture and on the ground',
    ],
    // a picture seen from behind
    [
      square.map(({ y, ...rest }) => ({ ...rest, y: -y })),
      'the four points do not go round the same way on the picture and on the ground',
    ],
  ])('[G42] %j: %s', (ties, line) => {
    expect(tiesFault(ties)).toBe(line);
  });

  it('[G42] good ties have none, in any order and turned any way', () => {
    expect(tiesFault(square)).toBeNull();
    expect(tiesFault(square.toReversed())).toBeNull();
    expect(tiesFault(square.map(({ x, y, ...seen }) => ({ ...seen, x: -y, y: x })))).toBeNull();
    expect(() => pictureMap(square.slice(0, 3))).toThrow('ties: expected two or four, found 3');
  });
});

describe('the ground that a picture shows', () => {
  it('[G43] lies before the horizon, holds what lies about the four points, and is what the picture has', () => {
    fc.assert(
      fc.property(seenSquare, (ties) => {
        const laid = { width: 3000, height: 3000, ties };
        const ground = shownGround(laid);
        const { toPicture, depth } = pictureMap(ties);
        expect(ground.length).toBeGreaterThanOrEqual(3);
        for (const point of ground) {
          const { x, y } = toPicture(point);
          expect(depth({ x, y })).toBeGreaterThan(0);
          for (const value of [x, y]) {
            expect(value).toBeGreaterThan(-0.5);
            expect(value).toBeLessThan(3000.5);
          }
        }
      }),
    );
  });

  it('[G43] the picture made of it has each of the four points at its place', () => {
    fc.assert(
      fc.property(seenSquare, (ties) => {
        const plan = straightPlan({ width: 3000, height: 3000, ties }, 4096);
        if (plan === null) throw new Error('expected a plan');
        expect(Math.max(plan.width, plan.height)).toBeLessThanOrEqual(4096);
        for (const { u, v, x, y } of ties) {
          const at = { x: (x - plan.corner.x) / plan.pixel, y: (plan.corner.y - y) / plan.pixel };
          expect(distance(projected(plan.toPicture, at), { x: u, y: v })).toBeLessThan(1e-3);
          expect(depthAt(plan.toPicture, at)).toBeGreaterThan(0);
        }
      }),
    );
  });

  it('[G44] moved, turned and made larger as a whole it is the same picture, else it is another', () => {
    const times = fc.double({ min: 0.1, max: 9, noNaN: true });
    fc.assert(
      fc.property(seenSquare, rigidMotion, times, (ties, motion, grown) => {
        const laid = ties.map(({ u, v, x, y }): Tie => ({
          u,
          v,
          ...motion({ x: x * grown, y: y * grown }),
        }));
        const by = carried(ties, laid);
        if (by === null) throw new Error('expected a motion');
        laid.forEach(({ x, y }, n) => {
          const was = ties[n] ?? { x: 0, y: 0 };
          expect(distance(projected(by, { x: was.x, y: was.y }), { x, y })).toBeLessThan(1e-2);
        });
        expect(
          carried(
            ties,
            laid.map((tie, n) => (n === 2 ? { ...tie, x: tie.x + 9 } : tie)),
          ),
        ).toBeNull();
        expect(
          carried(
            ties,
            laid.map((tie, n) => (n === 2 ? { ...tie, u: tie.u + 9 } : tie)),
          ),
        ).toBeNull();
        // turned over is no motion of the ground
        expect(
          carried(
            ties,
            ties.map(({ x, ...tie }) => ({ ...tie, x: -x })),
          ),
        ).toBeNull();
        expect(carried(ties, laid.slice(0, 2))).toBeNull();
      }),
    );
  });

  it('[G43] half of a square is left of one that is cut through its middle', () => {
    const unit = [
      { x: 0, y: 0 },
      { x: 4, y: 0 },
      { x: 4, y: 4 },
      { x: 0, y: 4 },
    ];
    expect(signedArea(cutPolygon(unit, ({ x }) => 2 - x))).toBe(8);
    expect(cutPolygon(unit, () => -1)).toEqual([]);
    expect(signedArea(cutPolygon(unit, () => 1))).toBe(16);
  });
});
