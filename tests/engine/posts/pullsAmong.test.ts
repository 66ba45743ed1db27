import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pullsAmong } from '../../../src/engine/posts/pullsAmong.ts';

describe('pull posts among line posts', () => {
  it('[P20] stand so that no piece is over the interval, as few as can be and even where they can', () => {
    const places = Array.from({ length: 99 }, (_, n) => 120 * (n + 1));
    expect(pullsAmong({ length: 12_000, places }, 6000)).toEqual([6000]);
    expect(pullsAmong({ length: 12_000, places }, 5999)).toEqual([3960, 8040]);
    expect(pullsAmong({ length: 5999, places: places.slice(0, 49) }, 6000)).toEqual([]);
  });

  it('[P20] where none is in reach the next one is taken', () => {
    expect(pullsAmong({ length: 300, places: [200] }, 100)).toEqual([200]);
    expect(pullsAmong({ length: 300, places: [] }, 100)).toEqual([]);
  });

  it('[P20] with a place in reach of every one before it no piece is over, and no fewer would do', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 999 }), { minLength: 1, maxLength: 40 }),
        fc.integer({ min: 50, max: 700 }),
        (drawn, interval) => {
          const places = drawn.toSorted((a, b) => a - b);
          const ends = [0, ...places, 1000];
          fc.pre(ends.slice(1).every((at, n) => at - (ends[n] ?? 0) <= interval));
          const pulls = pullsAmong({ length: 1000, places }, interval);
          const all = [0, ...pulls, 1000];
          expect(all.slice(1).every((at, n) => at - (all[n] ?? 0) <= interval)).toBe(true);
          // the fewest by trying every number of hops
          let [reach, hops] = [new Set([0]), 0];
          while (![...reach].some((at) => 1000 - at <= interval)) {
            reach = new Set(
              places.filter((at) => [...reach].some((from) => at > from && at - from <= interval)),
            );
            hops += 1;
          }
          expect(pulls).toHaveLength(hops);
        },
      ),
    );
  });
});
