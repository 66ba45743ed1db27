import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openingText } from '../../../src/drawing/opening/openingText.ts';
import { inches } from '../../../src/units/inches.ts';
import type { LengthSystem } from '../../../src/units/lengthStyle.ts';

const systems: LengthSystem[] = ['feet', 'inches', 'decimal feet', 'mm', 'm'];

describe('openingText', () => {
  it.each(systems)('[D31] in %s tells openings apart that differ by 1/16 in', (system) => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), (sixteenths) => {
        const write = (count: number) => openingText(inches(count / 16), { system, fraction: 16 });
        expect(write(sixteenths)).not.toBe(write(sixteenths + 1));
      }),
    );
  });

  it('[D31] is in the units of the site, hundredths of a foot in thousandths', () => {
    const write = (system: LengthSystem) => openingText(inches(192.0625), { system, fraction: 16 });
    expect(systems.map(write)).toEqual([
      '16\'-0 1/16"',
      '192 1/16"',
      // 192.0625 / 12 = 16.00521
      '16.005\' (192 1/16")',
      // 192.0625 × 25.4 = 4878.39
      '4878 mm',
      '4.878 m',
    ]);
  });

  it('[D31] keeps 1/16 in in feet even where the site writes 1/4 in', () => {
    const write = (value: number) =>
      openingText(inches(value), { system: 'decimal feet', fraction: 4 });
    expect(write(48)).not.toBe(write(48 + 1 / 16));
  });
});
