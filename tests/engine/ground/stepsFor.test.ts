import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { followGrade } from '../../../src/engine/ground/followGrade.ts';
import type { GradePost } from '../../../src/engine/ground/gradedFence.ts';
import { stepsFor } from '../../../src/engine/ground/stepsFor.ts';
import { inches } from '../../../src/units/inches.ts';
import { toDegrees } from '../../../src/units/radians.ts';

const posts = (bay: number, ...heights: readonly number[]): GradePost[] =>
  heights.map((ground, n) => ({ at: inches(n * bay), ground: inches(ground) }));
const fabric = (clear: number) => ({
  fabric: inches(72),
  above: inches(2),
  clear: inches(clear),
});

const heights = fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 2, maxLength: 12 });

describe('a fence on a grade', () => {
  // derived from 15 in 100: atan(0.15) = 8.53 degrees; 6 ft × 0.15 = 0.90 ft;
  // 100 ft × √(1 + 0.15²) = 101.119 ft
  it('[R11] at 15 % the rake is 8.53 degrees and a 6 ft end is cut 0.90 ft out of square', () => {
    const { bays } = followGrade(
      posts(120, 0, 18, 36, 54, 72, 90, 108, 126, 144, 162, 180),
      fabric(0),
    );
    expect(bays).toHaveLength(10);
    for (const { rake, endCut } of bays) {
      expect(toDegrees(rake)).toBeCloseTo(8.53, 2);
      expect(endCut / 12).toBeCloseTo(0.9, 12);
    }
    const long = bays.reduce((sum, { slope }) => sum + slope, 0);
    expect(long / 12).toBeCloseTo(101.119, 3);
  });

  it('[R11] following, the bottom keeps its room at every post and posts carry the plumb height', () => {
    fc.assert(
      fc.property(heights, fc.integer({ min: 0, max: 4 }), (grounds, clear) => {
        const fence = followGrade(posts(120, ...grounds), fabric(clear));
        fence.bays.forEach(({ from, to, plumb, slope, rake }, n) => {
          expect(from.z - (grounds[n] ?? NaN)).toBe(clear);
          expect(to.z - (grounds[n + 1] ?? NaN)).toBe(clear);
          expect(slope * Math.cos(rake)).toBeCloseTo(120, 9);
          expect(plumb * Math.cos(rake)).toBeCloseTo(72, 9);
          for (const post of [fence.posts[n], fence.posts[n + 1]]) {
            expect(post?.height).toBeGreaterThanOrEqual(clear + plumb + 2 - 1e-9);
          }
        });
        expect(fence.step).toBe(0);
      }),
    );
    const level = followGrade(posts(120, 5, 5, 5), fabric(1));
    expect(level.posts.map(({ height }) => height)).toEqual([75, 75, 75]);
  });

  // trade practice (facts of slope): the drop of each panel is the whole drop by the panels
  it('[R12] stepping, every step is the whole rise by the bays', () => {
    const fence = stepsFor(posts(120, 40, 30, 20, 10, 0), fabric(2));
    expect(fence.step).toBe(-10);
    expect(fence.bays.map(({ from, to }) => [from.z, to.z])).toEqual([
      [42, 42],
      [32, 32],
      [22, 22],
      [12, 12],
    ]);
    // the upper end of a panel has its room, the lower a step more
    expect(fence.posts.map(({ height }) => height)).toEqual([76, 86, 86, 86, 86]);
  });

  it('[R12] no panel is nearer to the ground at a post than it should be, and one is as near', () => {
    fc.assert(
      fc.property(heights, fc.integer({ min: 0, max: 4 }), (grounds, clear) => {
        const fence = stepsFor(posts(120, ...grounds), fabric(clear));
        const rooms = fence.bays.flatMap(({ from, to }, n) => [
          from.z - (grounds[n] ?? NaN),
          to.z - (grounds[n + 1] ?? NaN),
        ]);
        expect(Math.min(...rooms)).toBeCloseTo(clear, 9);
        fence.bays.slice(1).forEach(({ from }, n) => {
          expect(from.z - (fence.bays[n]?.from.z ?? NaN)).toBeCloseTo(fence.step, 9);
        });
        const whole = (grounds.at(-1) ?? 0) - (grounds[0] ?? 0);
        expect(fence.step * fence.bays.length).toBeCloseTo(whole, 9);
        fence.posts.forEach(({ height, ground }, n) => {
          const tops = [fence.bays[n - 1], fence.bays[n]].flatMap((bay) => bay?.from.z ?? []);
          expect(ground + height).toBeCloseTo(Math.max(...tops) + 74, 9);
        });
      }),
    );
  });

  it('[R12] fewer than two posts have no bay', () => {
    expect(stepsFor([], fabric(0))).toEqual({ way: 'step', bays: [], posts: [], step: 0 });
    expect(stepsFor(posts(120, 7), fabric(0)).bays).toEqual([]);
    expect(followGrade(posts(120, 7), fabric(0)).bays).toEqual([]);
  });
});
