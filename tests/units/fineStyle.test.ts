import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fineStyle } from '../../src/units/fineStyle.ts';
import { formatLength } from '../../src/units/formatLength.ts';
import { inches } from '../../src/units/inches.ts';
import type { LengthSystem } from '../../src/units/lengthStyle.ts';

const systems: readonly LengthSystem[] = ['feet', 'inches', 'decimal feet', 'mm', 'm'];

describe('fineStyle', () => {
  it('[U10] tells any two lengths apart that differ by 1/8 in, in every system', () => {
    const eighths = fc.integer({ min: 1, max: 8 * 400 });
    fc.assert(
      fc.property(eighths, fc.constantFrom(...systems), (n, system) => {
        const style = fineStyle({ system, fraction: 8 });
        const [one, other] = [n, n + 1].map((steps) => formatLength(inches(steps / 8), style));
        expect(one).not.toBe(other);
      }),
    );
  });

  it('[U10] leaves a style as it is that is fine already', () => {
    for (const system of systems) {
      const once = fineStyle({ system, fraction: 16 });
      expect(fineStyle(once)).toEqual(once);
    }
    expect(fineStyle({ system: 'feet', fraction: 4 })).toEqual({ system: 'feet', fraction: 4 });
  });
});
