import { expect, it } from 'vitest';
import { defaultGapUnder } from '../../src/trade/gapUnder.ts';

it('[T7] fabric may be 2 in above the ground at most', () => {
  // City of Everett WA sitework specification, of gates
  expect(defaultGapUnder.length).toBe(2);
});
