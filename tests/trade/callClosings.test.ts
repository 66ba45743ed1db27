import { describe, expect, it } from 'vitest';
import { callClosings, usualCallClosing } from '../../src/trade/callClosings.ts';

describe('how well calls close', () => {
  it('[T18] is published from rough to fine, and the usual one is among them', () => {
    const parts = callClosings.map((row) => row.parts);
    // N.J.A.C. 18:23A-1.23, Ripley County IN 155.047, 21 NCAC 56 .1603(c) and (b)
    expect(parts).toEqual([2_000, 5_000, 10_000, 20_000]);
    expect(parts).toContain(usualCallClosing);
    expect(callClosings.every(({ source }) => source.status === 'published')).toBe(true);
  });
});
