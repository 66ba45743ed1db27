import * as fc from 'fast-check';
import type { HandLine } from './handYard.ts';

/** Corners round a middle, in inches, so that the line round them does not cross itself. */
const ring = fc
  .array(fc.double({ min: 150, max: 900, noNaN: true }), { minLength: 3, maxLength: 9 })
  .map((reaches) =>
    reaches.map((reach, n) => {
      const turn = (2 * Math.PI * n) / reaches.length;
      return { x: reach * Math.cos(turn), y: reach * Math.sin(turn) };
    }),
  );

const gate = fc.record({
  leg: fc.integer({ min: 0, max: 8 }),
  from: fc.integer({ min: 30, max: 300 }),
  leaf: fc.constantFrom(32.25, 44, 56.875, 120),
});

/** Fence lines of all sorts of yards: open and closed, with and without gates. */
export const anyLines: fc.Arbitrary<HandLine[]> = fc.array(
  fc.record({
    corners: ring,
    closed: fc.boolean(),
    maxBay: fc.constantFrom(72, 96, 120),
    // one gate a leg: the hand-made layout does not sort them out
    gates: fc.uniqueArray(gate, { maxLength: 3, selector: ({ leg }) => leg }),
  }),
  { minLength: 1, maxLength: 2 },
);
