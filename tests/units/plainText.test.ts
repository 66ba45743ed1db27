import { expect, it } from 'vitest';
import { plainText } from '../../src/units/plainText.ts';

it.each([
  ['9′ – 10½″', `9' - 10 1/2 "`],
  ['  9 ’\u00A010 ” ', `9 ' 10 "`],
  [`9''`, '9"'],
  ['−⅞', '-7/8'],
  ['5-¹³⁄₁₆', '5-13/16'],
  ['½2', '1/2 2'],
  ['5²', '5²'],
  ['12 FT', '12 ft'],
])('[U1] spells %s as %s', (text, expected) => {
  expect(plainText(text)).toBe(expected);
});
