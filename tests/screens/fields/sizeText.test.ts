import { describe, expect, it } from 'vitest';
import { sizeText } from '../../../src/screens/fields/sizeText.ts';
import { inches } from '../../../src/units/inches.ts';

describe('sizeText', () => {
  it.each([
    [1.875, 'inches', '1 7/8"'],
    [2.03125, 'feet', '2 1/32"'],
    [56.25, 'feet', `4'-8 1/4"`],
    // pipes of the trade: no tape has their diameters
    [1.315, 'feet', '1.315"'],
    [1.9, 'decimal feet', '1.9"'],
    // 1.875 x 25.4 = 47.625
    [1.875, 'mm', '47.6 mm'],
    [1.315, 'm', '33.4 mm'],
    [-1, 'inches', '-1"'],
  ] as const)('writes %s in on a site in %s as %s', (length, system, written) => {
    expect(sizeText(inches(length), { system, fraction: 8 })).toBe(written);
  });
});
