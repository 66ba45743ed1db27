import { describe, expect, it } from 'vitest';
import { fencePipes } from '../../src/trade/pipes.ts';
import { schedule40 } from '../../src/trade/schedule40.ts';

describe('schedule40', () => {
  it('[T2] finds the regular wall by the actual outside diameter', () => {
    // reprinted schedule 40 table
    expect([1.9, 2.375, 2.875].map((od) => schedule40(od).wall)).toEqual([0.145, 0.154, 0.203]);
    const found = [...new Set(fencePipes.map(({ od }) => od))].map(schedule40);
    expect(found.filter(({ label }) => !label.endsWith(' schedule 40'))).toEqual([]);
  });

  it('[T2] does not take a trade name for a diameter', () => {
    expect(() => schedule40(2.5)).toThrow(
      'no fence pipe is 2.5 in outside; expected one of 1.315, 1.66, 1.9, 2.375',
    );
  });
});
