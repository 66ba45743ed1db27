import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstTouch } from '../../../src/engine/sweep/firstTouch.ts';
import type { Obstacle } from '../../../src/engine/sweep/obstacle.ts';
import type { LeafLayout } from '../../../src/engine/layout.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { lerp } from '../../../src/geometry/lerp.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';
import type { Segment } from '../../../src/geometry/segment.ts';
import { inches } from '../../../src/units/inches.ts';
import { fromDegrees, radians, toDegrees } from '../../../src/units/radians.ts';

const leaf = (change: Partial<LeafLayout> = {}): LeafLayout => ({
  id: 'leaf:1',
  width: inches(40),
  hinge: { x: 0, y: 0 },
  pin: 'said',
  hung: inches(1),
  thickness: inches(2),
  closed: radians(0),
  turns: radians(Math.PI),
  open: radians(Math.PI),
  ...change,
});

const bounds = { minX: -Infinity, minY: -Infinity, maxX: Infinity, maxY: Infinity };
const wall = (...edges: Segment<'site'>[]): Obstacle => ({
  met: { kind: 'building', id: 'feature:1' },
  edges,
  disc: null,
  ring: null,
  bounds,
});
const trunk = (centre: SitePoint, radius: number): Obstacle => ({
  met: { kind: 'tree', id: 'feature:1' },
  edges: [],
  disc: { centre, radius },
  ring: null,
  bounds,
});

const degrees = (of: LeafLayout, met: Obstacle): number => {
  const touch = firstTouch(of, met);
  return touch === null ? NaN : toDegrees(touch.turned);
};

/** A place of the turned leaf told by its own axes: along it from the pin, and off its middle. */
const onLeaf = ({ hinge, closed, turns }: LeafLayout, turned: number, at: SitePoint) => {
  const way = closed + Math.sign(turns) * turned;
  const [x, y] = [at.x - hinge.x, at.y - hinge.y];
  return {
    along: x * Math.cos(way) + y * Math.sin(way),
    off: -x * Math.sin(way) + y * Math.cos(way),
  };
};

/** How far a point is from the turned leaf; 0 in it. */
const gapTo = (of: LeafLayout, turned: number, at: SitePoint): number => {
  const { along, off } = onLeaf(of, turned, at);
  const [a, b] = [of.hung - along, along - of.hung - of.width];
  return Math.hypot(Math.max(0, a, b), Math.max(0, Math.abs(off) - of.thickness / 2));
};

const coordinate = fc.integer({ min: -60 * 16, max: 60 * 16 }).map((n) => n / 16);
const place = fc.record({ x: coordinate, y: coordinate });
const anyLeaf = fc
  .record({
    width: fc.integer({ min: 20, max: 50 }),
    hung: fc.integer({ min: 0, max: 4 }),
    thickness: fc.integer({ min: 1, max: 4 }),
    closed: fc.integer({ min: -179, max: 180 }),
    turns: fc.integer({ min: 30, max: 180 }),
    side: fc.constantFrom(-1, 1),
  })
  .map(({ width, hung, thickness, closed, turns, side }) =>
    leaf({
      width: inches(width),
      hung: inches(hung),
      thickness: inches(thickness),
      closed: fromDegrees(closed),
      turns: fromDegrees(side * turns),
    }),
  );

/** How far an obstacle is from the turned leaf, to what its edges are sampled to; 0 or less at it. */
const apart = (of: LeafLayout, turned: number, { edges, disc }: Obstacle): number => {
  if (disc !== null) return gapTo(of, turned, disc.centre) - disc.radius;
  const points = edges.flatMap(({ start, end }) =>
    Array.from({ length: 401 }, (_, n) => lerp(start, end, n / 400)),
  );
  return Math.min(...points.map((at) => gapTo(of, turned, at)));
};

const anyObstacle = fc.oneof(
  fc.tuple(place, place).map(([start, end]) => wall({ start, end })),
  fc.tuple(place, fc.integer({ min: 1, max: 12 })).map(([centre, radius]) => trunk(centre, radius)),
);

describe('firstTouch', () => {
  // derived: a leaf of half thickness 1 reaches a wall end at distance r when asin(1 / r) is left
  it('[W6] a wall end in the way is met by the face of the leaf', () => {
    const post = wall({ start: { x: 0, y: 20 }, end: { x: 0, y: 80 } });
    expect(degrees(leaf(), post)).toBeCloseTo(90 - toDegrees(radians(Math.asin(1 / 20))), 9);
    expect(degrees(leaf({ turns: fromDegrees(-180) }), post)).toBeNaN();
    expect(degrees(leaf({ turns: fromDegrees(85) }), post)).toBeNaN();
  });

  it('[W6] a wall along the way is met by the corner of the leaf', () => {
    const along = wall({ start: { x: -100, y: 30 }, end: { x: 100, y: 30 } });
    const reach = Math.hypot(41, 1);
    const turned = Math.asin(30 / reach) - Math.asin(1 / reach);
    expect(degrees(leaf(), along)).toBeCloseTo(toDegrees(radians(turned)), 9);
    expect(degrees(leaf(), wall({ start: { x: -9, y: 42 }, end: { x: 9, y: 42 } }))).toBeNaN();
  });

  it('[W6] a trunk is met at its radius', () => {
    // the face is 1 off the middle line: asin((1 + 4) / 30) is left of a quarter
    const turned = 90 - toDegrees(radians(Math.asin(5 / 30)));
    expect(degrees(leaf(), trunk({ x: 0, y: 30 }, 4))).toBeCloseTo(turned, 9);
    expect(degrees(leaf(), trunk({ x: 0, y: 50 }, 4))).toBeNaN();
  });

  it('[W6] what lies across the closed leaf is met at once', () => {
    expect(degrees(leaf(), wall({ start: { x: 20, y: -5 }, end: { x: 20, y: 5 } }))).toBe(0);
    expect(degrees(leaf(), trunk({ x: 20, y: 0 }, 3))).toBe(0);
  });

  it('[W6] just before it nothing is touched, and at it something is', () => {
    fc.assert(
      fc.property(anyLeaf, anyObstacle, (of, met) => {
        const touch = firstTouch(of, met);
        const until = touch?.turned ?? Math.abs(of.turns);
        for (let n = 0; n < 24; n += 1) {
          const before = (until * n) / 24;
          if (before < until - 1e-6) expect(apart(of, before, met)).toBeGreaterThan(0);
        }
        if (touch === null) return;
        // points lie up to 0.43 in from each other on the longest edge
        expect(apart(of, touch.turned, met)).toBeLessThan(0.25);
        const { disc } = met;
        if (disc === null) expect(gapTo(of, touch.turned, touch.at)).toBeLessThan(1e-6);
        else expect(distance(touch.at, disc.centre)).toBeLessThan(1e-6);
      }),
      { numRuns: 400 },
    );
  });
});
