import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inches } from '../../src/units/inches.ts';
import { lengthSteps } from '../../src/units/lengthSteps.ts';

describe('lengthSteps', () => {
  it.each([
    [118.5, 'feet', 948],
    [118.5, 'inches', 948],
    [118.5, 'decimal feet', 988],
    [-118.5, 'decimal feet', -988],
    [2.5, 'mm', 64],
    [10, 'm', 254],
    [-0.01, 'mm', 0],
  ] as const)('[U6] %d in is %s in whole steps: %d', (value, system, expected) => {
    expect(lengthSteps(inches(value), { system, fraction: 8 })).toBe(expected);
  });

  it('[U6] a half millimetre that was typed counts as a whole one more', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1_609_344 }), (mm) => {
        const steps = lengthSteps(inches((mm + 0.5) / 25.4), { system: 'mm', fraction: 8 });
        expect(steps).toBe(mm + 1);
      }),
    );
  });

  it('[U6] n/64 in is never pushed over a half', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 63_360 * 64 }), (n) => {
        const steps = lengthSteps(inches(n / 64), { system: 'feet', fraction: 16 });
        expect(steps).toBe(Math.floor((n + 2) / 4));
      }),
    );
  });
});
