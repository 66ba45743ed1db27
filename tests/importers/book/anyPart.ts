import fc from 'fast-check';
import type { Hardware } from '../../../src/site/hardware.ts';
import { inches } from '../../../src/units/inches.ts';

/** Lengths above zero as people read them: off a tape, in millimetres, or in decimals of an inch. */
const size = fc
  .oneof(
    fc.integer({ min: 1, max: 4000 }).map((n) => n / 32),
    fc.integer({ min: 1, max: 30_000 }).map((n) => n / 254),
    fc.double({ min: 1e-6, max: 5000, noNaN: true }),
  )
  .map(inches);

const rising = (...all: number[]) => all.toSorted((a, b) => a - b).map(inches);

const range = fc.option(
  fc.tuple(size, size).map((ends) => {
    const [low = inches(1), high = inches(1)] = rising(...ends);
    return { low, high };
  }),
);

const trimmed = fc.string({ unit: 'grapheme', maxLength: 60 }).map((text) => text.trim());

const takes = fc.tuple(size, size, size).map((ends) => {
  const [low = inches(1), planned = inches(1), high = inches(1)] = rising(...ends);
  return { low, planned, high };
});

/** Any part that a hand could have put in a book. */
export const anyPart: fc.Arbitrary<Hardware> = fc
  .record({
    kind: fc.constantFrom('hinge', 'latch', 'drop rod', 'closer'),
    label: trimmed.filter((text) => text !== ''),
    takes,
    spread: fc.constantFrom('uncertain', 'adjustable'),
    from: fc.constantFrom('measured', 'book', 'assumed'),
    on: trimmed,
    readings: fc.array(size, { maxLength: 24 }).map((all) => rising(...all)),
    fits: fc.record({ post: range, frame: range }),
    pin: fc.option(size),
    remark: fc.string({ unit: 'grapheme', maxLength: 200 }),
  })
  .filter(({ kind, takes: { low, high } }) => kind === 'hinge' || low < high)
  .map((part) => {
    const none = { low: inches(0), planned: inches(0), high: inches(0) };
    return {
      ...part,
      takes: part.kind === 'closer' ? none : part.takes,
      pin: part.kind === 'hinge' ? part.pin : null,
    };
  });
