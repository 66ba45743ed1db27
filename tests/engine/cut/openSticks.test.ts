import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openSticks, taken, type OpenStick } from '../../../src/engine/cut/openSticks.ts';
import { inches } from '../../../src/units/inches.ts';

const stickOf = (left: number): OpenStick => ({
  from: 'bought',
  stick: inches(left),
  pieces: [],
  left,
});

/** The same choice by looking at every stick: most taken, then least left, then first opened. */
const scanned = (all: readonly OpenStick[], need: number, least: number): OpenStick | null => {
  const usable = all.filter(({ left }) => taken(left, need, least) > 0);
  const [best] = usable.toSorted(
    (a, b) => taken(b.left, need, least) - taken(a.left, need, least) || a.left - b.left,
  );
  return best ?? null;
};

/** Lengths in eighths of an inch, or in whole millimetres, which are no binary fractions of an inch. */
const length = (most: number) =>
  fc
    .tuple(fc.integer({ min: 1, max: most }), fc.constantFrom(1 / 8, 1 / 25.4))
    .map(([steps, step]) => inches(steps * step));

describe('openSticks', () => {
  it('[L25] chooses as a look at every stick does, however they are opened and cut', () => {
    const step = fc.record({ need: length(400), opens: length(300), opensFirst: fc.boolean() });
    fc.assert(
      fc.property(
        fc.array(length(300), { maxLength: 12 }),
        fc.array(step, { maxLength: 20 }),
        length(100),
        fc.constantFrom(0, 1 / 8),
        (first, steps, least, kerf) => {
          const sticks = openSticks(first.map(stickOf), inches(kerf));
          for (const { need, opens, opensFirst } of steps) {
            if (opensFirst) sticks.open(stickOf(opens));
            const best = sticks.best(need, least);
            expect(best).toBe(scanned(sticks.all, need, least));
            const some = best === null ? 0 : taken(best.left, need, least);
            if (best !== null && some > 0) sticks.cut(best, { length: inches(some), for: 'r' });
          }
        },
      ),
      { numRuns: 500 },
    );
  });
});
