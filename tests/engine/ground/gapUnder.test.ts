import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gapUnder } from '../../../src/engine/ground/gapUnder.ts';
import { groundOf } from '../../../src/engine/ground/groundOf.ts';
import { profileAlong } from '../../../src/engine/ground/profileAlong.ts';
import { profileHeight } from '../../../src/engine/ground/profileHeight.ts';
import { inches } from '../../../src/units/inches.ts';
import { scatter } from '../../geometry/scatter.ts';
import { plane, rough, shotsOn, yard } from './shotsOn.ts';

const edge = (from: number, low: number, to: number, high: number) => ({
  from: { at: inches(from), z: inches(low) },
  to: { at: inches(to), z: inches(high) },
});

describe('gapUnder', () => {
  it('[R7] no place under the edge has a larger gap or lies deeper', () => {
    fc.assert(
      fc.property(fc.nat(), fc.nat(), (seed, way) => {
        const ground = groundOf(shotsOn(yard(seed, 60), rough));
        const profile = profileAlong(ground, scatter(way, 2, 5000));
        const [start, end] = [profile.length * 0.2, profile.length * 0.7];
        const heightOf = (at: number) => profileHeight(profile, inches(at)) ?? NaN;
        const bottom = edge(start, heightOf(start) + 2, end, heightOf(end) + 2);
        const { gap, buried, unknown } = gapUnder(profile, bottom);
        expect(unknown).toEqual([]);
        let [most, least] = [-Infinity, Infinity];
        for (let k = 0; k <= 2000; k += 1) {
          const at = start + ((end - start) * k) / 2000;
          const z = bottom.from.z + ((bottom.to.z - bottom.from.z) * k) / 2000;
          most = Math.max(most, z - heightOf(at));
          least = Math.min(least, z - heightOf(at));
        }
        expect(gap?.room ?? 0).toBeGreaterThanOrEqual(Math.max(0, most) - 1e-6);
        expect(gap?.room ?? 0).toBeLessThan(Math.max(0, most) + 2);
        expect(0 - (buried?.room ?? 0)).toBeGreaterThanOrEqual(Math.max(0, -least) - 1e-6);
        for (const room of [gap, buried]) {
          if (room !== null) expect(heightOf(room.at)).toBeCloseTo(room.ground, 9);
          if (room !== null) expect(room.edge - room.ground).toBeCloseTo(room.room, 12);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('[R7] over a plane the gap is the same all along', () => {
    const profile = profileAlong(groundOf(shotsOn(yard(3, 20), plane(9, 0.1, 0))), [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
    ]);
    const { gap, buried } = gapUnder(profile, edge(0, 11, 100, 21));
    expect(gap?.room).toBeCloseTo(2, 9);
    expect(buried).toBeNull();
    expect(gapUnder(profile, edge(0, 8, 100, 18)).buried?.room).toBeCloseTo(-1, 9);
  });

  it('[R7] what is outside of the shots is told', () => {
    const profile = profileAlong(groundOf(shotsOn(yard(3, 20), plane(9, 0, 0))), [
      { x: 2950, y: 0 },
      { x: 3050, y: 0 },
    ]);
    expect(gapUnder(profile, edge(10, 11, 90, 11)).unknown).toEqual([{ from: 50, to: 90 }]);
  });
});
