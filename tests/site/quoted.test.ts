import fc from 'fast-check';
import { expect, it } from 'vitest';
import { quoted } from '../../src/site/quoted.ts';

it.each([
  ['a', '"a"'],
  ['a\nb"c', '"a\\nb\\"c"'],
  ['\u2028\u0085', '"??"'],
  ['x'.repeat(40), `"${'x'.repeat(40)}"`],
  ['x'.repeat(41), `"${'x'.repeat(39)}…"`],
  [3.5, '3.5'],
  [Number.NaN, 'NaN'],
  [null, 'null'],
  [true, 'true'],
  [undefined, 'nothing'],
  [[1, 2], 'a list'],
  [{ a: 1 }, 'an object'],
])('[S2] %j is quoted as %s', (value, text) => {
  expect(quoted(value)).toBe(text);
});

it('[S2] whatever is quoted stays short and on one line', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.jsonValue()), (value) => {
      expect(quoted(value)).not.toMatch(/[\p{Cc}\u2028\u2029]/u);
      // forty characters, each written out as six at most, and the quotation marks
      expect(quoted(value).length).toBeLessThanOrEqual(242);
    }),
  );
});
