import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inches } from '../../src/units/inches.ts';
import { parseLength } from '../../src/units/parseLength.ts';
import { plainLength } from '../../src/units/plainLength.ts';

describe('plainLength', () => {
  it.each([
    [0, 'feet', '0 in'],
    [7.4, 'inches', '7 in'],
    [60, 'feet', '5 ft'],
    [150.5, 'decimal feet', '12 ft 7 in'],
    [-30, 'feet', '2 ft 6 in'],
    [11.6, 'feet', '1 ft'],
    [0, 'mm', '0 m'],
    [1219.2 / 25.4, 'mm', '1.22 m'],
    [1500 / 25.4, 'm', '1.5 m'],
  ] as const)('[U28] %d in as %s is %s', (value, system, text) => {
    expect(plainLength(inches(value), system)).toBe(text);
  });

  it('[U28] is never off by more than half of what it is told in', () => {
    const size = fc.double({ min: 0, max: 600_000, noNaN: true });
    fc.assert(
      fc.property(size, fc.constantFrom('feet' as const, 'm' as const), (value, system) => {
        const back = parseLength(plainLength(inches(value), system), 'feet');
        if (!back.ok) throw new Error(back.reason);
        const most = system === 'feet' ? 0.5 : 5 / 25.4;
        expect(Math.abs(back.value - value)).toBeLessThanOrEqual(most + 1e-6);
      }),
    );
  });
});
