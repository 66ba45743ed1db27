import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatLength } from '../../src/units/formatLength.ts';
import { inches } from '../../src/units/inches.ts';
import { lengthOfSteps } from '../../src/units/lengthOfSteps.ts';
import type { LengthStyle } from '../../src/units/lengthStyle.ts';
import { roundLength } from '../../src/units/roundLength.ts';

const styles: fc.Arbitrary<LengthStyle> = fc.record({
  system: fc.constantFrom('feet', 'inches', 'decimal feet', 'mm', 'm'),
  fraction: fc.constantFrom(2, 4, 8, 16, 32),
});
const lengths = fc.double({ min: -63_360, max: 63_360, noNaN: true }).map(inches);

describe('roundLength', () => {
  it('[U6] is off by half the finest at most, and rounds to itself', () => {
    fc.assert(
      fc.property(lengths, styles, (value, style) => {
        const rounded = roundLength(value, style);
        expect(Math.abs(rounded - value)).toBeLessThanOrEqual(lengthOfSteps(1, style) / 2 + 1e-9);
        expect(roundLength(rounded, style)).toBe(rounded);
        expect(formatLength(rounded, style)).toBe(formatLength(value, style));
      }),
    );
  });

  it('[U6] mirrors about zero, which has no sign', () => {
    fc.assert(
      fc.property(lengths, styles, (value, style) => {
        const rounded = roundLength(value, style);
        expect(Object.is(rounded, -0)).toBe(false);
        expect(roundLength(inches(-value), style)).toBe(rounded === 0 ? 0 : -rounded);
      }),
    );
    expect(roundLength(inches(-0.01), { system: 'mm', fraction: 8 })).toBe(0);
  });
});
