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

const sixtyFourths = (n: number): string =>
  `${n < 0 ? '-' : ''}${Math.floor(Math.abs(n) / 64)} ${Math.abs(n) % 64}/64`;

describe('parseLength', () => {
  it.each([
    ['56 1/4', 56.25],
    ['56-1/4"', 56.25],
    [`9'-10 1/2"`, 118.5],
    [`9' 10.5`, 118.5],
    [`9'10`, 118],
    ['118.5in', 118.5],
    [`12.25'`, 147],
    ['12 ft', 144],
    ['9 ft 10 in', 118],
    [`9' 14"`, 122],
    ['9′-10½″', 118.5],
    ['9’ 10⅞”', 118.875],
    ['56¼', 56.25],
    ['½', 0.5],
    ['5/4', 1.25],
    [`1,200'`, 14400],
    ['−3 1/2', -3.5],
  ])('[U1] reads %s as %d in', (text, expected) => {
    expect(valueOf(text)).toBe(expected);
  });

  // the inch is 25.4 mm by the international yard and pound agreement of 1959
  it.each([
    ['3005mm', 3005 / 25.4],
    ['3.005 m', 3.005 / 0.0254],
    ['300.5 cm', 300.5 / 2.54],
  ])('[U2] reads %s as %d in', (text, expected) => {
    expect(valueOf(text)).toBeCloseTo(expected, 9);
  });

  it('[U3] a number without a unit is in the unit asked for', () => {
    expect(valueOf('54', 'feet')).toBe(648);
    expect(valueOf('54')).toBe(54);
    expect(valueOf('254', 'mm')).toBeCloseTo(10, 12);
    expect(valueOf('1 1/2', 'feet')).toBe(1.5);
  });

  it('[U4] every n/64 in up to a mile comes back exactly', () => {
    const count = fc.integer({ min: -63360 * 64, max: 63360 * 64 });
    fc.assert(fc.property(count, (n) => valueOf(sixtyFourths(n)) === n / 64));
  });

  it.each(['', 'ten feet', '1/0', '1 5/4', '9,5', '1e5', 'NaN', 'Infinity', '--4', `9'-`, '3 m m'])(
    '[U5] refuses “%s” in one line that quotes it',
    (text) => {
      const parsed = parseLength(text);
      expect(parsed.ok).toBe(false);
      if (parsed.ok) return;
      expect(parsed.reason).toContain(`“${text}”`);
      expect(parsed.reason).not.toContain('\n');
    },
  );

  it('[U5] never throws, whatever the text', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const parsed = parseLength(text);
        return parsed.ok ? Number.isFinite(parsed.value) : !parsed.reason.includes('\n');
      }),
    );
  });
});

const styles = fc.record({
  system: fc.constantFrom<LengthSystem>('feet', 'inches', 'decimal feet', 'mm', 'm'),
  fraction: fc.constantFrom<LengthStyle['fraction']>(2, 4, 8, 16, 32),
});

describe('formatLength', () => {
  it.each([
    [118.5, 'feet', `9'-10 1/2"`],
    [108, 'feet', `9'-0"`],
    [6.5, 'feet', '6 1/2"'],
    [11.99, 'feet', `1'-0"`],
    [118.5, 'inches', '118 1/2"'],
    [118.5, 'decimal feet', `9.88'`],
    [3005 / 25.4, 'mm', '3005 mm'],
    [3005 / 25.4, 'm', '3.005 m'],
    [-3.5, 'inches', '-3 1/2"'],
    [-0.001, 'inches', '0"'],
  ] as const)('[U6] writes %d in in %s as %s', (value, system, expected) => {
    expect(formatLength(inches(value), { system, fraction: 8 })).toBe(expected);
  });

  it('[U7] what is written reads back as what was rounded', () => {
    const length = fc.double({ min: -63360, max: 63360, noNaN: true });
    fc.assert(
      fc.property(length, styles, (value, style) => {
        const rounded = roundLength(inches(value), style);
        const back = valueOf(formatLength(inches(value), style));
        const exact = style.system === 'feet' || style.system === 'inches';
        return exact ? back === rounded : Math.abs(back - rounded) < 1e-6;
      }),
    );
  });
});
