import { describe, expect, it } from 'vitest';
import { lengthOfSteps } from '../../src/units/lengthOfSteps.ts';

describe('lengthOfSteps', () => {
  it.each([
    // 1 ft is 12 in, 1 in is 25.4 mm (international yard and pound, 1959)
    ['feet', 1, 1 / 8],
    ['inches', 20, 2.5],
    ['decimal feet', 1, 0.12],
    ['decimal feet', 1225, 147],
    ['mm', 1, 1 / 25.4],
    ['mm', 254, 10],
    ['m', 1, 1 / 25.4],
    ['m', -508, -20],
  ] as const)('[U6] of %s: %d make %d in', (system, steps, expected) => {
    expect(lengthOfSteps(steps, { system, fraction: 8 })).toBeCloseTo(expected, 15);
  });
});
