import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shorten } from '../../src/drawing/shorten.ts';
import { textWidth } from '../../src/drawing/textWidth.ts';

describe('shorten', () => {
  it('[D2] what comes out fits, and is the text itself where that fits', () => {
    fc.assert(
      fc.property(fc.string(), fc.double({ min: 0, max: 3, noNaN: true }), (text, width) => {
        const cut = shorten(text, width, 0.135, 'bold');
        expect(textWidth(cut, 0.135, 'bold')).toBeLessThanOrEqual(width);
        if (textWidth(text, 0.135, 'bold') <= width) expect(cut).toBe(text);
        else expect(cut === '' || cut.endsWith('…')).toBe(true);
      }),
    );
  });

  it('[D2] one letter more would not fit, however long the text is', () => {
    const text = fc.string({ unit: fc.constantFrom(...'iW m…北'), minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(text, fc.integer({ min: 1, max: 99 }), (piece, times) => {
        const long = piece.repeat(times);
        const cut = shorten(long, 1, 0.135, 'regular');
        const letters = [...long];
        const fits = (one: string): boolean => textWidth(one, 0.135, 'regular') <= 1;
        const most = letters.findLastIndex((_, n) =>
          fits(`${letters.slice(0, n).join('').trimEnd()}…`),
        );
        expect(cut).toBe(fits(long) ? long : `${letters.slice(0, most).join('').trimEnd()}…`);
      }),
    );
  });

  it('keeps as much of the text as fits', () => {
    expect(shorten('Drive gate at the lane', 1, 0.135, 'regular')).toMatch(/^Drive ga.*…$/);
  });
});
