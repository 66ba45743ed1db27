import { describe, expect, it } from 'vitest';
import { fencePipes } from '../../src/trade/pipes.ts';

describe('fencePipes', () => {
  it('[T2] no two are the same pipe, and no two are called the same', () => {
    const keys = fencePipes.map(({ od, wall }) => `${od} × ${wall}`);
    expect(new Set(keys).size).toBe(fencePipes.length);
    expect(new Set(fencePipes.map(({ label }) => label)).size).toBe(fencePipes.length);
  });

  it('[T2] the 2-1/2 of the trade is 2.375 in outside, not 2.875', () => {
    // reprinted schedule 40 table: 2-3/8 is the plumber's 2 in; LA County Code Title 26
    // section 6605.2.3: the plumber's 2-1/2 is 2-7/8 in
    const called = fencePipes.filter(({ label }) => label.startsWith('2-1/2 '));
    expect(called.map(({ od }) => od)).toEqual([2.375, 2.375]);
  });

  it('spans the sizes of the fence pipe standard', () => {
    // ASTM F1083-10 1.1: 1.315 to 8.625 in outside diameter
    const sizes = fencePipes.map(({ od }) => od);
    expect([Math.min(...sizes), Math.max(...sizes)]).toEqual([1.315, 8.625]);
    expect(sizes).toEqual(sizes.toSorted((a, b) => a - b));
  });
});
