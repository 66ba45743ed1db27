import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LengthSystem } from '../../src/units/lengthStyle.ts';
import { parseLength } from '../../src/units/parseLength.ts';
import { quotedText } from '../../src/units/quotedText.ts';

const valueOf = (text: string, bare?: LengthSystem): number => {
  const parsed = parseLength(text, bare);
  if (!parsed.ok) throw new Error(parsed.reason);
  return parsed.value;
};

const reasonOf = (text: string, bare?: LengthSystem): string => {
  const parsed = parseLength(text, bare);
  return parsed.ok ? `read as ${parsed.value}` : parsed.reason;
};

const systems = ['feet', 'inches', 'decimal feet', 'mm', 'm'] as const;

/** n/64 in as a whole number and 64ths, and as feet, inches and 64ths. */
const inInches = (n: number): string =>
  `${n < 0 ? '-' : ''}${Math.floor(Math.abs(n) / 64)} ${Math.abs(n) % 64}/64`;
const inFeet = (n: number): string => {
  const size = Math.abs(n);
  const whole = Math.floor(size / 64);
  return `${n < 0 ? '-' : ''}${Math.floor(whole / 12)}'-${whole % 12} ${size % 64}/64"`;
};

describe('parseLength', () => {
  it.each([
    ['56 1/4', 56.25],
    ['56-1/4"', 56.25],
    ['56 1/4 in.', 56.25],
    [`9'-10 1/2"`, 118.5],
    [`9' - 10-1/2"`, 118.5],
    [`9' 10.5`, 118.5],
    [`9'10`, 118],
    [`9'-1/4`, 108.25],
    ['118.5in', 118.5],
    ['118.5 INCHES', 118.5],
    ['.5"', 0.5],
    [`9''`, 9],
    [`12.25'`, 147],
    ['12 ft', 144],
    ['12 Feet', 144],
    ['1 foot', 12],
    ['9 1/2 ft', 114],
    ['9 ft 10 in', 118],
    ['9ft10in', 118],
    ['9 ft. 10 in.', 118],
    [`0'-6"`, 6],
    [`9' 14"`, 122],
    ['5/4', 1.25],
    ['  56   1/4\t', 56.25],
    ['56\u00A01/4', 56.25],
    [`43-7 1/2"`, 523.5],
    [`43-7-1/2"`, 523.5],
    ['43-7.5 in', 523.5],
    ['9-0"', 108],
    ['-9-10 1/2"', -118.5],
    ['9–10½″', 118.5],
    [`7-1/2"`, 7.5],
    [`1,200'`, 14400],
    [`1,234,567"`, 1234567],
    [`1,200'-6 1/2"`, 14406.5],
    ['-9 1/2"', -9.5],
    [`-9'-10 1/2"`, -118.5],
    ['- 3', -3],
    ['-0', 0],
  ])('[U1] reads %s as %d in', (text, expected) => {
    expect(valueOf(text)).toBe(expected);
  });

  it.each([
    ['½', 0.5],
    ['¼"', 0.25],
    ['¾', 0.75],
    ['⅛', 0.125],
    ['⅜', 0.375],
    ['⅝', 0.625],
    ['⅞', 0.875],
    ['56¼', 56.25],
    ['56-¼', 56.25],
    ['56–1⁄4', 56.25],
    ['1⁄16', 0.0625],
    ['5 3∕16', 5.1875],
    ['5³⁄₁₆″', 5.1875],
    ['9′-10½″', 118.5],
    ['9′ 10½', 118.5],
    ['9’ 10⅞”', 118.875],
    ['9‘ 10“', 118],
    ['9′′', 9],
    ['9’–10”', 118],
    ['−3 1/2', -3.5],
    ['–½', -0.5],
  ])('[U1] reads %s as %d in', (text, expected) => {
    expect(valueOf(text)).toBe(expected);
  });

  // the inch is 25.4 mm by the international yard and pound agreement of 1959
  it.each([
    ['25.4mm', 1],
    ['2.54 cm', 1],
    ['0.0254 m', 1],
    ['-304.8 mm', -12],
    ['3005mm', 30050 / 254],
    ['3.005 m', 30050 / 254],
    ['300.5 cm', 30050 / 254],
    ['3,005 MM', 30050 / 254],
    ['3. M', 30000 / 254],
  ])('[U2] reads %s as %d in', (text, expected) => {
    expect(valueOf(text)).toBe(expected);
  });

  it('[U2] the same length in mm, cm and m is the same to the last bit', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1_609_344 }), (mm) => {
        const size = valueOf(`${mm} mm`);
        expect(valueOf(`${(mm / 10).toFixed(1)} cm`)).toBe(size);
        expect(valueOf(`${(mm / 1000).toFixed(3)} m`)).toBe(size);
        expect(size).toBeCloseTo(mm / 25.4, 9);
      }),
    );
  });

  it('[U2] every inch in a mile is exact in tenths of a millimetre', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 63_360 }), (n) => {
        expect(valueOf(`${((n * 254) / 10).toFixed(1)} mm`)).toBe(n);
      }),
    );
  });

  it.each([
    ['54', 'feet', 648],
    ['54', 'decimal feet', 648],
    ['54.25', 'decimal feet', 651],
    ['54', 'inches', 54],
    ['254', 'mm', 10],
    ['-2.54', 'm', -100],
    ['1,200', 'feet', 14400],
    ['1 1/2"', 'feet', 1.5],
    ['1 1/2', 'inches', 1.5],
    ['1/2', 'mm', 0.5],
    ['9"', 'feet', 9],
    [`9'`, 'mm', 108],
  ] as const)('[U3] reads %s under %s as %d in', (text, bare, expected) => {
    expect(valueOf(text, bare)).toBe(expected);
  });

  it.each(['54 1/2', '1/2', '54-1/2', '54½'])(
    '[U3] refuses %s where a number would be feet: it may be either',
    (text) => {
      const parsed = parseLength(text, 'feet');
      expect(parsed).toMatchObject({ ok: false });
      if (!parsed.ok) expect(parsed.reason).toContain('may be feet or inches');
    },
  );

  it('[U3] takes a number without a unit for inches unless told otherwise', () => {
    expect(valueOf('54')).toBe(54);
  });

  it('[U4] every n/64 in up to a mile comes back exactly', () => {
    const mile = 63_360 * 64;
    fc.assert(
      fc.property(fc.integer({ min: -mile, max: mile }), (n) => {
        expect(valueOf(inInches(n))).toBe(n / 64);
        expect(valueOf(inFeet(n))).toBe(n / 64);
        expect(valueOf(`${n / 64}`)).toBe(n / 64);
      }),
      { numRuns: 1000 },
    );
  });

  it('[U4] each n/64 in of the first ten feet, one by one', () => {
    const counts = Array.from({ length: 120 * 64 + 1 }, (_, n) => n);
    expect(counts.filter((n) => valueOf(inInches(n)) !== n / 64)).toEqual([]);
    expect(counts.filter((n) => valueOf(inFeet(n)) !== n / 64)).toEqual([]);
  });

  it.each([
    ['', 'is empty'],
    [' \t ', 'is empty'],
    ['ten feet', 'is not a length'],
    ['9 10 1/2', 'is not a length'],
    ['9 10', 'is not a length'],
    ['43-7', 'is not a length'],
    ['43-7 1/2', 'is not a length'],
    ['43-12"', 'is not a length'],
    ['4-3-2"', 'is not a length'],
    ['43-7 5/4"', 'has a fraction that is not under 1'],
    ['4.5-7"', 'is not a length'],
    ['43 - 7"', 'is not a length'],
    ['10 - 1/2', 'is not a length'],
    ['½2', 'is not a length'],
    ['5²', 'is not a length'],
    [`9'-`, 'is not a length'],
    [`9' 10'`, 'is not a length'],
    [`9" 10'`, 'is not a length'],
    ['3 m m', 'is not a length'],
    ['3 km', 'is not a length'],
    ['1/2 mm', 'is not a length'],
    ['1.5/2', 'is not a length'],
    ['1.2.3', 'is not a length'],
    ['.', 'is not a length'],
    ['-', 'is not a length'],
    ['--4', 'is not a length'],
    ['+4', 'is not a length'],
    ['in', 'is not a length'],
    ['1e5', 'is not a length'],
    ['0x10', 'is not a length'],
    ['NaN', 'is not a length'],
    ['Infinity', 'is not a length'],
    ['٣', 'is not a length'],
    ['1/0', 'divides by zero'],
    [`9'-1/00"`, 'divides by zero'],
    ['1 5/4', 'has a fraction that is not under 1'],
    ['1 4/4', 'has a fraction that is not under 1'],
    [`9.5' 6"`, 'has part of a foot and then inches'],
    [`9 1/2' 6"`, 'has part of a foot and then inches'],
    ['9,5', 'has a decimal comma'],
    ['0,125', 'has a decimal comma'],
    ['1,2345', 'has a decimal comma'],
    ['12,00,000', 'has a decimal comma'],
    [`12,25'`, 'has a decimal comma'],
    ['3,005 m', 'has a comma that can be read in two ways'],
    ['1,200 cm', 'has a comma that can be read in two ways'],
  ])('[U5] says that “%s” %s', (text, why) => {
    const reason = reasonOf(text);
    expect(reason.startsWith(`“${text.trim()}” ${why}`)).toBe(true);
    expect(reason).toMatch(/expected .*such as|expected .*9'-10 1\/2"/);
    expect(reason).not.toContain('\n');
  });

  it('[U5] a thousands comma in a bare number is not taken for metres', () => {
    expect(reasonOf('3,005', 'm')).toContain('“3,005” has a comma that can be read in two ways');
  });

  it('[U5] refuses what is too long and quotes its beginning', () => {
    expect(valueOf('1'.repeat(40))).toBeGreaterThan(1e39);
    expect(reasonOf('1'.repeat(41))).toContain(`“${'1'.repeat(40)}…” is too long`);
    expect(reasonOf(`${' '.repeat(60)}5`)).toBe('read as 5');
  });

  const signs = fc.constantFrom(...'0123456789/.,-\' "ftinmc½¼⅛⁄′″’”–−e\n\u0000\u2028');
  const texts = fc.oneof(fc.string({ unit: 'binary' }), fc.string({ unit: signs, maxLength: 14 }));

  it('[U5] never throws: a finite length, or one line that quotes the text', () => {
    fc.assert(
      fc.property(texts, fc.constantFrom(...systems), (text, bare) => {
        const parsed = parseLength(text, bare);
        if (parsed.ok) {
          expect(Number.isFinite(parsed.value)).toBe(true);
          expect(Object.is(parsed.value, -0)).toBe(false);
          return;
        }
        expect(parsed.reason.startsWith(`${quotedText(text)} `)).toBe(true);
        expect(parsed.reason).toContain('expected');
        expect(parsed.reason).not.toMatch(/[\p{Cc}\u2028\u2029]/u);
      }),
      { numRuns: 2000 },
    );
  });

  it('[U1] case, blanks around it and the sign in front change nothing but the sign', () => {
    fc.assert(
      fc.property(fc.string({ unit: signs, maxLength: 10 }), (text) => {
        const parsed = parseLength(text);
        if (!parsed.ok || /^\s*[-–−]/.test(text)) return;
        expect(valueOf(` ${text.toUpperCase()} `)).toBe(parsed.value);
        expect(valueOf(`-${text}`)).toBe(parsed.value === 0 ? 0 : -parsed.value);
      }),
      { numRuns: 2000 },
    );
  });
});
