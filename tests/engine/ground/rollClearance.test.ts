import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groundOf } from '../../../src/engine/ground/groundOf.ts';
import { heightAt } from '../../../src/engine/ground/heightAt.ts';
import { rollClearance, type RollingLeaf } from '../../../src/engine/ground/rollClearance.ts';
import { add } from '../../../src/geometry/add.ts';
import { lerp } from '../../../src/geometry/lerp.ts';
import { moved } from '../../../src/geometry/moved.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';
import { inches } from '../../../src/units/inches.ts';
import { fromDegrees } from '../../../src/units/radians.ts';
import { scatter } from '../../geometry/scatter.ts';
import { plane, shotsOn, yard } from './shotsOn.ts';

/** A leaf that rolls back along its own length, or at a slant to it. */
const anyRoll = fc
  .record({
    x: fc.integer({ min: -80, max: 80 }),
    y: fc.integer({ min: -80, max: 80 }),
    way: fc.integer({ min: 0, max: 359 }),
    slant: fc.constantFrom(0, 0, 180, 35),
    width: fc.integer({ min: 40, max: 160 }),
    rolls: fc.integer({ min: 1, max: 150 }),
  })
  .map(({ x, y, way, slant, width, rolls }): { leaf: RollingLeaf; rolls: number } => {
    const start: SitePoint = { x, y };
    const end = moved(start, fromDegrees(way), width);
    const off = moved<'site'>({ x: 0, y: 0 }, fromDegrees(way + slant), rolls);
    return {
      leaf: { closed: { start, end }, stored: { start: add(start, off), end: add(end, off) } },
      rolls,
    };
  });

const onLeaf = ({ closed, stored }: RollingLeaf, rolled: number, share: number) =>
  lerp(lerp(closed.start, stored.start, rolled), lerp(closed.end, stored.end, rolled), share);

describe('rollClearance', () => {
  it('[R15] no place that the leaf rolls over has less room, and it is there when it says', () => {
    let known = 0;
    fc.assert(
      fc.property(
        fc.nat(),
        fc.integer({ min: 3, max: 40 }),
        anyRoll,
        (seed, count, { leaf, rolls }) => {
          const ground = groundOf(
            shotsOn(
              scatter(seed, count, 600),
              ({ x, y }) => 9 * Math.sin(x / 60) + 7 * Math.cos(y / 45),
            ),
          );
          const { lowest, unknown } = rollClearance(ground, leaf, inches(5));
          let least = Infinity;
          for (let n = 0; n <= 60; n += 1) {
            for (let k = 0; k <= 100; k += 1) {
              const height = heightAt(ground, onLeaf(leaf, n / 60, k / 100));
              if (height !== null) least = Math.min(least, 5 - height);
              const at = (rolls * n) / 60;
              const told = unknown.some(({ from, to }) => at > from - 0.1 && at < to + 0.1);
              if (height === null && n > 0 && n < 60) expect(told).toBe(true);
            }
          }
          if (lowest === null) {
            expect(least).toBe(Infinity);
            return;
          }
          known += 1;
          // stations nearer than 1/64 in count as one
          expect(lowest.clearance).toBeLessThanOrEqual(least + 0.02);
          expect(lowest.clearance).toBe(lowest.bottom - lowest.ground);
          const places = Array.from({ length: 4001 }, (_, k) =>
            onLeaf(leaf, lowest.moved / rolls, k / 4000),
          );
          const off = places.map((at) => Math.hypot(at.x - lowest.at.x, at.y - lowest.at.y));
          expect(Math.min(...off)).toBeLessThan(0.05);
        },
      ),
      { numRuns: 100 },
    );
    expect(known).toBeGreaterThan(40);
  });

  // derived: from x 100..200 rolled back by 100 at 10 % it is over the ground's 20 in while closed
  it('[R15] on a plane it is lowest at the uphill end of its way', () => {
    const ground = groundOf(shotsOn(yard(0, 20), plane(0, 0.1, 0)));
    const piece = (from: number) => ({ start: { x: from, y: 7 }, end: { x: from + 100, y: 7 } });
    const { lowest, unknown } = rollClearance(
      ground,
      { closed: piece(100), stored: piece(0) },
      inches(24),
    );
    expect(lowest?.clearance).toBeCloseTo(4, 9);
    expect(lowest?.at.x).toBeCloseTo(200, 9);
    expect(lowest?.moved).toBe(0);
    expect(unknown).toEqual([]);
    const up = rollClearance(ground, { closed: piece(100), stored: piece(220) }, inches(24)).lowest;
    expect(up?.clearance).toBeCloseTo(-8, 9);
    expect(up?.moved).toBeCloseTo(120, 9);
  });

  it('[R14] rolled out of the shots it is told from where on', () => {
    const ground = groundOf(shotsOn(yard(0, 20), plane(0, 0, 0)));
    const piece = (from: number) => ({ start: { x: from, y: 7 }, end: { x: from + 100, y: 7 } });
    const out = rollClearance(ground, { closed: piece(2850), stored: piece(2970) }, inches(2));
    expect(out.unknown).toEqual([{ from: 50, to: 120 }]);
    const still = { closed: piece(2950), stored: piece(2950) };
    expect(rollClearance(ground, still, inches(2)).unknown).toEqual([{ from: 0, to: 0 }]);
  });
});
