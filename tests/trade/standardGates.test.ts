import { expect, it } from 'vitest';
import { standardGates } from '../../src/trade/standardGates.ts';

it('[T11] single gates are sold for 36, 39, 42 and 48 in, double gates for 10 and 12 ft', () => {
  // Chain Link Fencing, Detailed Instructions (Scribd 154728461)
  const openings = (leaves: number) =>
    standardGates.filter((gate) => gate.leaves === leaves).map(({ opening }) => opening);
  expect(openings(1)).toEqual([36, 39, 42, 48]);
  expect(openings(2).map((opening) => opening / 12)).toEqual([10, 12]);
});
