import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { textWidth } from '../../src/drawing/textWidth.ts';
import { wrapText } from '../../src/drawing/wrapText.ts';

const setting = { width: 1.2, size: 0.145, weight: 'regular' } as const;

describe('wrapText', () => {
  it('[D2] every line fits, and no word is lost that fits a line', () => {
    const word = fc.constantFrom('gate', 'opening', "9'-10", '1/2"', 'a', 'galvanised');
    fc.assert(
      fc.property(fc.array(word, { maxLength: 20 }), (words) => {
        const lines = wrapText(words.join(' '), setting);
        for (const line of lines) {
          expect(textWidth(line, setting.size, setting.weight)).toBeLessThanOrEqual(setting.width);
        }
        expect(lines.join(' ')).toBe(words.join(' '));
      }),
    );
  });

  it('[D22] breaks no length before its fraction', () => {
    const lengths = fc.tuple(fc.nat({ max: 99 }), fc.nat({ max: 11 }), fc.constantFrom(2, 4, 8));
    fc.assert(
      fc.property(fc.array(lengths, { maxLength: 12 }), (some) => {
        const told = some.map(([feet, rest, part]) => `from ${feet}'-${rest} 1/${part}" on`);
        const lines = wrapText(told.join(' '), setting);
        expect(lines.filter((line) => line.startsWith('1/'))).toEqual([]);
        expect(lines.join(' ')).toBe(told.join(' '));
      }),
    );
  });

  it('keeps the breaks of the text and cuts a word that is too long', () => {
    const [first, second, ...more] = wrapText('Dog\nPneumonoultramicroscopic', setting);
    expect(first).toBe('Dog');
    expect(second).toMatch(/^Pneumon.*…$/);
    expect(more).toEqual([]);
  });

  it('has no lines for nothing', () => {
    expect(wrapText('', setting)).toEqual([]);
  });
});
