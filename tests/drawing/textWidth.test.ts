import { createRequire } from 'node:module';
import { openSync } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { textWidth } from '../../src/drawing/textWidth.ts';

const require = createRequire(import.meta.url);
const faces = {
  regular: openSync(require.resolve('@expo-google-fonts/barlow/400Regular/Barlow_400Regular.ttf')),
  bold: openSync(require.resolve('@expo-google-fonts/barlow/600SemiBold/Barlow_600SemiBold.ttf')),
};
const texts = ['9\'-10 1/2"', 'Hold 118 3/4" — Größe Łódź', 'WAVE/Ty.,', '½ ⅛ ′ ″ ≤ …'];

/** The font's own layout of a text, ligatures and kerning off, in ems. */
const laidOut = (weight: 'regular' | 'bold', text: string): number => {
  const face = faces[weight];
  if (!('layout' in face)) throw new Error('expected one face in the font file');
  const run = face.layout(text, { liga: false, kern: false });
  return run.glyphs.reduce((total, glyph) => total + glyph.advanceWidth, 0) / face.unitsPerEm;
};

describe('textWidth', () => {
  it.each(['regular', 'bold'] as const)(
    '[D1] %s agrees with the font that is embedded',
    (weight) => {
      for (const text of texts) {
        expect(textWidth(text, 10, weight)).toBeCloseTo(laidOut(weight, text) * 10, 2);
      }
    },
  );

  it('grows with the size and is nothing for no text', () => {
    expect(textWidth('Gate', 2, 'bold')).toBeCloseTo(2 * textWidth('Gate', 1, 'bold'), 12);
    expect(textWidth('', 1, 'regular')).toBe(0);
  });

  it('counts a character that the font lacks as an em', () => {
    expect(textWidth('門', 0.135, 'regular')).toBeCloseTo(0.135, 12);
  });
});
