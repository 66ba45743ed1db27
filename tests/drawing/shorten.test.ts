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

  it('keeps as much of the text as fits', () => {
    expect(shorten('Drive gate at the lane', 1, 0.135, 'regular')).toMatch(/^Drive ga.*…$/);
  });
});
