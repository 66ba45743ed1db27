import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatLength } from '../../src/units/formatLength.ts';
import { inches } from '../../src/units/inches.ts';
import type { LengthStyle, LengthSystem } from '../../src/units/lengthStyle.ts';
import { parseLength } from '../../src/units/parseLength.ts';
import { roundLength } from '../../src/units/roundLength.ts';

const valueOf = (text: string, bare?: LengthSystem): number => {
  const parsed = parseLength(text, bare);
  if (!parsed.ok) throw new Error(parsed.reason);
  return parsed.value;
};

const mile = 63_360;
const systems = ['feet', 'inches', 'decimal feet', 'mm', 'm'] as const;
const fractions = [2, 4, 8, 16, 32] as const;
const styles: fc.Arbitrary<LengthStyle> = fc.record({
  system: fc.constantFrom(...systems),
  fraction: fc.constantFrom(...fractions),
});

describe('formatLength', () => {
  it.each([
    [118.5, 'feet', `9'-10 1/2"`],
    [108, 'feet', `9'-0"`],
    [108.25, 'feet', `9'-0 1/4"`],
    [6.5, 'feet', '6 1/2"'],
    [0.375, 'feet', '3/8"'],
    [0, 'feet', '0"'],
    [11 + 31 / 32, 'feet', `1'-0"`],
    [23.9999, 'feet', `2'-0"`],
    [-118.5, 'feet', `-9'-10 1/2"`],
    [-11.99, 'feet', `-1'-0"`],
    [mile, 'feet', `5280'-0"`],
    [118.5, 'inches', '118 1/2"'],
    [11 + 31 / 32, 'inches', '12"'],
    [-3.5, 'inches', '-3 1/2"'],
    [-0.001, 'inches', '0"'],
    [-0, 'inches', '0"'],
    [1 / 16, 'inches', '1/8"'],
    [-1 / 16, 'inches', '-1/8"'],
    [118.5, 'decimal feet', `9.88'`],
    [-118.5, 'decimal feet', `-9.88'`],
    [1.5, 'decimal feet', `0.13'`],
    [108, 'decimal feet', `9.00'`],
    [-0.01, 'decimal feet', `0.00'`],
    [3005 / 25.4, 'mm', '3005 mm'],
    [120.5 / 25.4, 'mm', '121 mm'],
    [-2.5, 'mm', '-64 mm'],
    [0.01, 'mm', '0 mm'],
    [3005 / 25.4, 'm', '3.005 m'],
    [0.5 / 25.4, 'm', '0.001 m'],
    [-0.01, 'm', '0.000 m'],
  ] as const)('[U6] writes %d in in %s as %s', (value, system, expected) => {
    expect(formatLength(inches(value), { system, fraction: 8 })).toBe(expected);
  });

  it.each([
    [2, `9'-11"`],
    [4, `9'-10 3/4"`],
    [8, `9'-10 3/4"`],
    [16, `9'-10 13/16"`],
    [32, `9'-10 25/32"`],
  ] as const)('[U6] writes 118 25/32 in to 1/%d as %s', (fraction, expected) => {
    expect(formatLength(inches(118 + 25 / 32), { system: 'feet', fraction })).toBe(expected);
  });

  it.each(systems)('[U6] halves of %s go away from zero', (system) => {
    const style: LengthStyle = { system, fraction: 16 };
    const step = { feet: 1 / 16, inches: 1 / 16, 'decimal feet': 0.12, mm: 1 / 25.4, m: 1 / 25.4 };
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100_000 }), (n) => {
        const half = inches((n + 0.5) * step[system]);
        const up = formatLength(inches((n + 1) * step[system]), style);
        expect(formatLength(half, style)).toBe(up);
        expect(formatLength(inches(-half), style)).toBe(`-${up}`);
      }),
    );
  });

  it('[U6] feet are followed by fewer than twelve inches, and a fraction is in its lowest terms', () => {
    const length = fc.double({ min: 12, max: mile, noNaN: true });
    fc.assert(
      fc.property(length, fc.constantFrom(...fractions), (value, fraction) => {
        const text = formatLength(inches(value), { system: 'feet', fraction });
        const found = /^\d+'-(?:(\d+) ?)?(?:(?<!\d)(\d+)\/(\d+))?"$/.exec(text);
        expect(found).not.toBeNull();
        expect(Number(found?.[1] ?? 0)).toBeLessThan(12);
        if (found?.[2] === undefined) return;
        expect(Number(found[2]) % 2).toBe(1);
        expect(Number(found[2])).toBeLessThan(Number(found[3]));
        expect(Number(found[3])).toBeLessThanOrEqual(fraction);
      }),
    );
  });

  it('[U7] every n/32 in up to a mile comes back exactly', () => {
    const count = fc.integer({ min: -mile * 32, max: mile * 32 });
    fc.assert(
      fc.property(count, fc.constantFrom('feet', 'inches'), (n, system) => {
        const text = formatLength(inches(n / 32), { system, fraction: 32 });
        expect(valueOf(text)).toBe(n / 32);
      }),
      { numRuns: 1000 },
    );
  });

  it('[U7] what is written reads back as what was rounded, to the last bit', () => {
    const length = fc.double({ min: -mile, max: mile, noNaN: true });
    fc.assert(
      fc.property(length, styles, fc.constantFrom(...systems), (value, style, bare) => {
        const rounded = roundLength(inches(value), style);
        expect(valueOf(formatLength(inches(value), style), bare)).toBe(rounded);
      }),
      { numRuns: 2000 },
    );
  });
});
