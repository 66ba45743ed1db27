import { describe, expect, it } from 'vitest';
import {
  cornerVerdict,
  rectangleVerdict,
  roundingText,
  tripleText,
} from '../../../../src/screens/yard/squaring/squaringText.ts';
import { SquaringSheet } from '../../../../src/screens/yard/squaring/SquaringSheet.tsx';
import { longEnough, squareStart } from '../../../../src/screens/yard/squaring/squareAtHand.ts';
import { usualTrusts } from '../../../../src/site/trusts.ts';
import { inches } from '../../../../src/units/inches.ts';
import { namedSite } from '../../../store/namedSite.ts';
import { shown } from '../shown.tsx';

const feet = (value: number) => inches(value * 12);
const style = { system: 'feet', fraction: 16 } as const;
const metric = { system: 'mm', fraction: 16 } as const;

describe('the check of a corner', () => {
  const read = (across: number) =>
    cornerVerdict({ base: feet(40), leg: feet(30), across: inches(across) }, style);

  it('says square, or which way the far stake goes and by how much', () => {
    expect(read(600)).toEqual({ square: true, text: 'Square.' });
    // 50 ft less an inch: the leg leans (600² - 599²) / 960 = 1.249 in towards B
    expect(read(599)).toEqual({
      square: false,
      text: `Out of square by 1 1/4": swing C 1 1/4" away from B, its tape from A kept tight.`,
    });
    expect(read(601).text).toContain('towards B');
    expect(read(900).text).toMatch(/^Across 75'-0": expected from 10'-0" to 70'-0"/);
  });
});

describe('the check of a rectangle', () => {
  const read = (ac: number, bd: number) =>
    rectangleVerdict(
      { base: feet(100), side: feet(60), ac: inches(ac), bd: inches(bd) },
      style,
      usualTrusts,
    );
  const across = Math.hypot(1200, 720);

  it('says square where both diagonals are equal, and else which way the far side goes', () => {
    expect(read(across, across)).toEqual({
      square: true,
      text: 'Square: both diagonals are equal.',
    });
    // 5 in more and 5 in less: (1404.43² - 1394.43²) / 4800 is 5.831 in
    expect(read(across + 5, across - 5).text).toBe(
      `Out of square by 5 13/16": swing C and D together 5 13/16" the way from C to D, both sides kept tight.`,
    );
    expect(read(across - 5, across + 5).text).toContain('the way from D to C');
  });

  it('says that the sides are wrong where no such sides have these diagonals', () => {
    expect(read(across + 12, across + 12).text).toBe(
      `These diagonals are 1'-0" longer than such sides have: tape the sides again.`,
    );
    expect(read(across - 12, across - 12).text).toContain('shorter than such sides have');
    // within what tapes of this length can be off
    expect(read(across + 1, across + 1).square).toBe(true);
  });
});

it('says how far the tape’s own marks put the corner off', () => {
  expect(roundingText(feet(40), feet(30), style)).toBe('That is exact on this tape.');
  // the root of 13,600 ft is 116'-7.428": 7 7/16" is 0.0097 in long; over 100 ft that is 0.0113 in
  expect(roundingText(feet(100), feet(60), style)).toBe(
    'On this tape that puts the corner less than 1/32" out of square.',
  );
  // to the half inch 0.072 in long, the corner 0.084 in
  expect(roundingText(feet(100), feet(60), { ...style, fraction: 2 })).toBe(
    'On this tape that puts the corner 3/32" out of square.',
  );
  // 35,545.48 mm is 0.48 mm less on the tape, the corner 0.56 mm
  expect(roundingText(feet(100), feet(60), metric)).toBe(
    'On this tape that puts the corner 1 mm out of square.',
  );
});

it('writes three lengths as they are on the tape', () => {
  const triple = { short: feet(6), long: feet(8), across: feet(10) };
  expect(tripleText(triple, style)).toBe(`6'-0" · 8'-0" · 10'-0"`);
});

it('starts with the legs that are there, and with whole metres on a metric site', () => {
  expect(squareStart(style, [feet(21), feet(11)])).toMatchObject({ base: 252, leg: 132 });
  expect(squareStart(metric, null).base * 25.4).toBeCloseTo(8000, 9);
  expect(longEnough({ base: inches(0) }, style)).toBe('Length 0": expected more than 0');
  expect(longEnough({ base: inches(1) }, style)).toBeNull();
});

it('shows the largest that fits with its steps, and says what is missing where none does', () => {
  const sheet = (
    legs: readonly [number, number] | null,
    lengths: typeof style | typeof metric = style,
  ) =>
    shown(
      { ...namedSite('Yard'), lengths },
      <SquaringSheet
        legs={legs === null ? null : [feet(legs[0]), feet(legs[1])]}
        onClose={() => undefined}
      />,
    )
      .replaceAll('&quot;', '"')
      .replaceAll('&#x27;', "'");
  expect(sheet(null)).toContain(`Square corner at A: A to B 40'-0", A to C 30'-0", B to C 50'-0"`);
  expect(sheet(null)).toContain('One tape does both');
  expect(sheet(null)).toContain('Measure both diagonals before you dig.');
  expect(sheet([21, 11])).toContain(`9'-0" · 12'-0" · 15'-0"`);
  expect(sheet([2, 2])).toContain(`3-4-5 needs legs of 3'-0" and 4'-0" and a tape of 5'-0"`);
  expect(sheet(null, metric)).toContain('6000 mm · 8000 mm · 10000 mm');
});
