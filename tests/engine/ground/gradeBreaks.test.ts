import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gradeBreaks, greatestBreak } from '../../../src/engine/ground/gradeBreaks.ts';
import type { ProfileStation } from '../../../src/engine/ground/profile.ts';
import { inches } from '../../../src/units/inches.ts';

const profile = (...stations: readonly (readonly [number, number])[]) => ({
  known: [stations.map(([at, z]): ProfileStation => ({ at: inches(at), z: inches(z) }))],
});
const abrupt = { reach: inches(24), limit: 0.15 };

describe('gradeBreaks', () => {
  it('[R6] a break over the limit is found where it is, with the grades on both sides', () => {
    const found = gradeBreaks(profile([0, 0], [200, 0], [500, 60], [900, 60]), abrupt);
    expect(found.map(({ at }) => at)).toEqual([200, 500]);
    const [dip, crest] = found;
    expect(dip?.before).toBe(0);
    expect(dip?.after).toBeCloseTo(0.2, 12);
    expect(dip?.change).toBeCloseTo(0.2, 12);
    expect(crest?.change).toBeCloseTo(-0.2, 12);
    expect(gradeBreaks(profile([0, 0], [200, 0], [500, 42]), abrupt)).toEqual([]);
  });

  it('[R6] one that the triangles spread over some inches is one', () => {
    const [one, ...more] = gradeBreaks(
      profile([0, 0], [200, 0], [203, 0.2], [205, 0.6], [505, 60.6]),
      abrupt,
    );
    expect(more).toEqual([]);
    expect(one?.at).toBeGreaterThanOrEqual(200);
    expect(one?.at).toBeLessThanOrEqual(205);
    expect(one?.change).toBeGreaterThan(0.17);
    expect(one?.change).toBeLessThanOrEqual(0.2);
  });

  it('[R6] none nearer than the reach to an end or to a greater one', () => {
    expect(gradeBreaks(profile([0, 0], [20, 0], [500, 240]), abrupt)).toEqual([]);
    const station = fc.tuple(fc.integer({ min: 0, max: 900 }), fc.integer({ min: 0, max: 90 }));
    fc.assert(
      fc.property(fc.uniqueArray(station, { minLength: 2, selector: ([at]) => at }), (stations) => {
        const rising = profile(...stations.sort(([a], [b]) => a - b));
        const found = gradeBreaks(rising, abrupt);
        found.slice(1).forEach(({ at }, n) => {
          expect(at - (found[n]?.at ?? NaN)).toBeGreaterThanOrEqual(24);
        });
        const most = greatestBreak(rising, abrupt.reach);
        const over = Math.abs(most?.change ?? 0) > 0.15;
        expect(found.length > 0).toBe(over);
        if (over) expect(found).toContainEqual(most);
      }),
    );
  });
});
