import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groundOf, type Ground } from '../../../src/engine/ground/groundOf.ts';
import { heightAt } from '../../../src/engine/ground/heightAt.ts';
import { leafBottom } from '../../../src/engine/ground/leafBottom.ts';
import {
  turnClearance,
  type LeafBottom,
  type TurningLeaf,
} from '../../../src/engine/ground/turnClearance.ts';
import { moved } from '../../../src/geometry/moved.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';
import { rotated } from '../../../src/geometry/rotated.ts';
import { inches } from '../../../src/units/inches.ts';
import { fromDegrees, radians, toDegrees } from '../../../src/units/radians.ts';
import { scatter } from '../../geometry/scatter.ts';
import { plane, shotsOn, yard } from './shotsOn.ts';

const leaf = (change: Partial<TurningLeaf> = {}): TurningLeaf => ({
  hinge: { x: 0, y: 0 },
  closed: radians(0),
  turns: fromDegrees(90),
  hung: inches(2),
  width: inches(118),
  ...change,
});
const level = (z: number): LeafBottom => ({ near: inches(z), far: inches(z) });

/** Where the leaf is at a turn, so far along its bottom. */
const onLeaf = (
  { hinge, closed, turns, hung, width }: TurningLeaf,
  turned: number,
  share: number,
) => moved(hinge, radians(closed + Math.sign(turns) * turned), hung + share * width);

/** The least room by looking at so many turns and places of the leaf. */
const looked = (ground: Ground, of: TurningLeaf, bottom: LeafBottom, steps: number): number => {
  let least = Infinity;
  for (let n = 0; n <= steps; n += 1) {
    for (let k = 0; k <= steps; k += 1) {
      const height = heightAt(ground, onLeaf(of, (Math.abs(of.turns) * n) / steps, k / steps));
      const z = bottom.near + ((bottom.far - bottom.near) * k) / steps;
      if (height !== null) least = Math.min(least, z - height);
    }
  }
  return least;
};

const anyLeaf = fc
  .record({
    x: fc.integer({ min: -60, max: 60 }),
    y: fc.integer({ min: -60, max: 60 }),
    closed: fc.integer({ min: -180, max: 180 }),
    turns: fc.integer({ min: 20, max: 180 }),
    side: fc.constantFrom(-1, 1),
    hung: fc.integer({ min: 0, max: 5 }),
    width: fc.integer({ min: 36, max: 150 }),
  })
  .map(({ x, y, closed, turns, side, hung, width }) =>
    leaf({
      hinge: { x, y },
      closed: fromDegrees(closed),
      turns: fromDegrees(side * turns),
      hung: inches(hung),
      width: inches(width),
    }),
  );
const anyBottom = fc
  .tuple(fc.integer({ min: -30, max: 30 }), fc.integer({ min: -40, max: 60 }))
  .map(([near, rise]) => ({ near: inches(near), far: inches(near + rise) }));

/** Rough ground about the origin, of which a part may have no shots. */
const anyGround = fc
  .record({
    seed: fc.nat(),
    count: fc.integer({ min: 3, max: 40 }),
    off: fc.constantFrom(0, 130),
    corners: fc.boolean(),
  })
  .map(({ seed, count, off, corners }) =>
    groundOf(
      shotsOn(
        [
          ...(corners ? yard(0, 0) : []),
          ...scatter(seed, count, 600).map(({ x, y }) => ({ x: x + off, y })),
        ],
        ({ x, y }) => 12 * Math.sin(x / 60) + 9 * Math.cos(y / 45),
      ),
    ),
  );

describe('turnClearance', () => {
  it('[R13] no place under the swing has less room, and the one that is told has just so much', () => {
    let known = 0;
    fc.assert(
      fc.property(anyGround, anyLeaf, anyBottom, (ground, of, bottom) => {
        const { lowest, unknown } = turnClearance(ground, of, bottom);
        const least = looked(ground, of, bottom, 80);
        if (lowest === null) {
          expect(least).toBe(Infinity);
          return;
        }
        known += 1;
        // a place up to 1/64 in outside of the shots counts as on their rim, where nothing was sought
        const spare = unknown.length === 0 ? 1e-6 : 0.02;
        expect(lowest.clearance).toBeLessThanOrEqual(least + spare);
        const share =
          (Math.hypot(lowest.at.x - of.hinge.x, lowest.at.y - of.hinge.y) - of.hung) / of.width;
        const there = onLeaf(of, lowest.moved, share);
        expect(Math.hypot(there.x - lowest.at.x, there.y - lowest.at.y)).toBeLessThan(1e-5);
        expect(lowest.ground).toBe(heightAt(ground, lowest.at));
        expect(lowest.bottom).toBeCloseTo(bottom.near + share * (bottom.far - bottom.near), 5);
        expect(lowest.clearance).toBe(lowest.bottom - lowest.ground);
      }),
      { numRuns: 200 },
    );
    expect(known).toBeGreaterThan(100);
  });

  // derived: a level leaf whose tip is 120 in from the pin, uphill at 10 %, has the ground 12 in up
  it('[R13] on a plane the tip is lowest where it points uphill', () => {
    const ground = groundOf(shotsOn(yard(0, 30), plane(0, 0, 0.1)));
    const up = turnClearance(ground, leaf({ turns: fromDegrees(120) }), level(4)).lowest;
    expect(up?.clearance).toBeCloseTo(-8, 9);
    expect(toDegrees(radians(up?.moved ?? NaN))).toBeCloseTo(90, 6);
    expect(up?.at.y).toBeCloseTo(120, 9);
    const down = turnClearance(ground, leaf({ turns: fromDegrees(-120) }), level(4)).lowest;
    expect(down?.clearance).toBeCloseTo(4, 9);
    expect(down?.moved).toBe(0);
    const part = turnClearance(ground, leaf({ turns: fromDegrees(30) }), level(4)).lowest;
    expect(part?.clearance).toBeCloseTo(4 - 6, 9);
  });

  it('[R13] a shot under the swing that stands up is found, and one beside it is not', () => {
    const shots = (x: number, y: number) =>
      groundOf([...shotsOn(yard(0, 0), () => 0), { id: 'rock', x, y, z: 5 }]);
    const found = turnClearance(shots(50, 60), leaf(), level(3)).lowest;
    expect(found).toMatchObject({ clearance: -2, at: { x: 50, y: 60 }, ground: 5, bottom: 3 });
    expect(found?.moved).toBeCloseTo(Math.atan2(60, 50), 12);
    const beside = turnClearance(shots(50, -60), leaf(), level(3)).lowest;
    expect(beside?.clearance).toBeGreaterThan(-2);
  });

  it('[R13] moving and turning the yard changes neither room nor turn', () => {
    fc.assert(
      fc.property(fc.nat(), anyLeaf, fc.integer({ min: 1, max: 6 }), (seed, of, angle) => {
        const turned = ({ x, y }: SitePoint): SitePoint =>
          rotated<'site'>({ x: x + 4000, y: y - 900 }, { x: 0, y: 0 }, radians(angle));
        const shots = shotsOn(scatter(seed, 30, 600), ({ x, y }) => 9 * Math.sin(x / 50 + y / 80));
        const other = shots.map((shot) => ({ ...shot, ...turned(shot) }));
        const there = leaf({
          ...of,
          hinge: turned(of.hinge),
          closed: radians(of.closed + angle),
        });
        const a = turnClearance(groundOf(shots), of, level(3));
        const b = turnClearance(groundOf(other), there, level(3));
        expect(b.lowest?.clearance ?? NaN).toBeCloseTo(a.lowest?.clearance ?? NaN, 5);
        expect(b.unknown.length).toBe(a.unknown.length);
        a.unknown.forEach(({ from, to }, n) => {
          expect(b.unknown[n]?.from).toBeCloseTo(from, 4);
          expect(b.unknown[n]?.to).toBeCloseTo(to, 4);
        });
      }),
    );
  });

  it('[R14] the part of the swing outside of the shots is told, and nothing is guessed there', () => {
    fc.assert(
      fc.property(anyGround, anyLeaf, (ground, of) => {
        const { unknown } = turnClearance(ground, of, level(0));
        for (let n = 1; n < 200; n += 1) {
          const turned = (Math.abs(of.turns) * n) / 200;
          const near = unknown.some(
            ({ from, to }) => Math.abs(turned - from) < 2e-3 || Math.abs(turned - to) < 2e-3,
          );
          if (near) continue;
          const told = unknown.some(({ from, to }) => turned > from && turned < to);
          const shares = Array.from({ length: 41 }, (_, k) => k / 40);
          const out = shares.filter(
            (share) => heightAt(ground, onLeaf(of, turned, share)) === null,
          );
          // between two looks the leaf may leave the shots by a corner of the rim
          if (out.length > 0) expect(told).toBe(true);
          if (!told) expect(out).toEqual([]);
        }
      }),
      { numRuns: 150 },
    );
    expect(turnClearance(groundOf([]), leaf(), level(0))).toEqual({
      lowest: null,
      unknown: [{ from: 0, to: Math.PI / 2 }],
    });
    // shots to 60 in north: the tip, 120 in out, is past them from 30 degrees on
    const half = groundOf(
      shotsOn(
        [-500, 500].flatMap((x) => [-500, 60].map((y) => ({ x, y }))),
        () => 0,
      ),
    );
    const [part, ...more] = turnClearance(half, leaf(), level(2)).unknown;
    expect(more).toEqual([]);
    expect(toDegrees(radians(part?.from ?? NaN))).toBeCloseTo(30, 1);
    expect(part?.to).toBe(Math.PI / 2);
  });

  it('[R13] level leaves start a gap above the ground at the higher post', () => {
    const ground = groundOf(shotsOn(yard(0, 20), plane(10, 0.1, 0)));
    const at = (x: number) => ({ x, y: 0 });
    expect(leafBottom(ground, [at(0), at(100)], inches(2))).toBeCloseTo(22, 9);
    expect(leafBottom(ground, [at(0), at(9000)], inches(2))).toBeNull();
    expect(leafBottom(ground, [], inches(2))).toBeNull();
  });
});
