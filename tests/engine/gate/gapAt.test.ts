import { describe, expect, it } from 'vitest';
import { gapAt } from '../../../src/engine/gate/gapAt.ts';
import { openingOf } from '../../../src/engine/gate/openingOf.ts';
import { inches } from '../../../src/units/inches.ts';
import { term } from './term.ts';

describe('gapAt', () => {
  const opening = openingOf([
    term('hinge', 1.75, 2, 2),
    term('leaf', 44),
    term('latch', 1.5, 2, 2.5),
  ]);

  it.each([
    [48, 2, 'holds', 0],
    [48.5, 2.5, 'may hold', 0],
    [47.4, 1.4, 'may hold', 0],
    [47, 1, 'too narrow', 0.25],
    [49, 3, 'too wide', 0.5],
  ] as const)('[O3] posts set at %d leave %d: %s by %d', (width, planned, verdict, by) => {
    const gap = gapAt(opening, inches(width));
    expect(gap.planned).toBeCloseTo(planned, 12);
    expect(gap.verdict).toBe(verdict);
    expect(gap.by).toBe(by);
  });

  it('[O3] says what is left with the parts at their largest and at their smallest', () => {
    expect(gapAt(opening, inches(48))).toMatchObject({ least: 2, most: 2.25 });
  });

  it('[O3] holds at both ends of what holds for sure, also in millimetres', () => {
    const metric = openingOf([
      term('hinge', 31 / 25.4, 33 / 25.4, 34 / 25.4),
      term('leaf', 1217 / 25.4),
      term('latch', 41 / 25.4, 47 / 25.4, 59 / 25.4),
    ]);
    expect(metric.holdsFrom).toBeLessThan(metric.holdsTo);
    expect(gapAt(metric, metric.holdsFrom).verdict).toBe('holds');
    expect(gapAt(metric, metric.holdsTo).verdict).toBe('holds');
    expect(gapAt(metric, inches(metric.holdsTo + 0.001)).verdict).toBe('may hold');
  });

  it('[O3] leaves that do not go in at all leave a gap below nothing', () => {
    expect(gapAt(opening, inches(44))).toMatchObject({ planned: -2, verdict: 'too narrow' });
  });
});
