import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quotedText } from '../../src/units/quotedText.ts';

describe('quotedText', () => {
  it.each([
    [' 9 1/2 ', '“9 1/2”'],
    ['', '“”'],
    ['nine\n\n and a\thalf', '“nine and a half”'],
    ['\u001B[31mred', '“�[31mred”'],
    ['right\u202Eleft', '“right�left”'],
    ['a'.repeat(40), `“${'a'.repeat(40)}”`],
    ['a'.repeat(41), `“${'a'.repeat(40)}…”`],
    ['📏'.repeat(41), `“${'📏'.repeat(40)}…”`],
  ])('[U5] quotes %j as %s', (text, expected) => {
    expect(quotedText(text)).toBe(expected);
  });

  it('[U5] is one short printable line, whatever the text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 90 }), (text) => {
        const line = quotedText(text);
        expect(line).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/u);
        expect([...line].length).toBeLessThanOrEqual(43);
      }),
    );
  });
});
