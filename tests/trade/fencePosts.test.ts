import { describe, expect, it } from 'vitest';
import { postSizes, postsForHeight } from '../../src/trade/fencePosts.ts';
import { inches } from '../../src/units/inches.ts';

const ods = (feet: number) => {
  const row = postsForHeight(inches(12 * feet));
  return row && [row.line.od, row.terminal.od, row.topRail.od];
};

describe('postsForHeight', () => {
  it('gives line, terminal and top rail by height', () => {
    // up to 6 ft: Byesville OH fence code (1-5/8, 2, 2-1/2, 1-3/8 by name); above: ASTM F1043
    // industrial, from memory
    expect(ods(3)).toEqual([1.66, 2.375, 1.315]);
    expect(ods(4)).toEqual([1.66, 2.375, 1.315]);
    expect(ods(5)).toEqual([1.66, 2.375, 1.315]);
    expect(ods(6)).toEqual([1.9, 2.375, 1.315]);
    expect(ods(7)).toEqual([2.375, 2.875, 1.66]);
    expect(ods(8)).toEqual([2.375, 2.875, 1.66]);
    expect(ods(10)).toEqual([2.875, 4, 1.66]);
    expect(ods(12)).toEqual([2.875, 4, 1.66]);
  });

  it('moves to the next row just above a height', () => {
    expect(postsForHeight(inches(72 + 1 / 64))?.line.od).toBe(2.375);
  });

  it('has no answer above 12 ft', () => {
    expect(postsForHeight(inches(144.5))).toBeNull();
  });

  it('[T4] nothing gets thinner with height, and no terminal is thinner than a line post', () => {
    postSizes.forEach((row, n) => {
      const lower = postSizes[n - 1] ?? row;
      expect(row.upTo).toBeGreaterThanOrEqual(lower.upTo);
      expect(row.line.od).toBeGreaterThanOrEqual(lower.line.od);
      expect(row.terminal.od).toBeGreaterThanOrEqual(lower.terminal.od);
      expect(row.topRail.od).toBeGreaterThanOrEqual(lower.topRail.od);
      expect(row.terminal.od).toBeGreaterThanOrEqual(row.line.od);
    });
  });
});
