import { writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { openSync } from 'fontkit';

const require = createRequire(import.meta.url);
const font = (file: string) => openSync(require.resolve(`@expo-google-fonts/barlow/${file}`));
const top = join(import.meta.dirname, '..', '..');

/**
 * Runs of code points to measure, the first and the last of each: Latin with its accents, Greek
 * letters of formulas, punctuation, currency, fractions and mathematical signs.
 */
const spans: readonly (readonly [number, number])[] = [
  [0x20, 0x7e],
  [0xa0, 0x17f],
  [0x218, 0x21b],
  [0x394, 0x394],
  [0x3a9, 0x3c0],
  [0x1ea0, 0x1ef9],
  [0x2010, 0x2044],
  [0x2074, 0x2079],
  [0x20ac, 0x20ac],
  [0x2122, 0x2122],
  [0x215b, 0x215e],
  [0x2212, 0x221e],
  [0x2248, 0x2265],
];

/** Advance widths of one span in thousandths of an em; 0 where the font has no such character. */
const widths = (face: ReturnType<typeof font>, [first, last]: readonly [number, number]) =>
  Array.from({ length: last - first + 1 }, (_, n) => first + n).map((code) =>
    'hasGlyphForCodePoint' in face && face.hasGlyphForCodePoint(code)
      ? Math.round((face.glyphForCodePoint(code).advanceWidth * 1000) / face.unitsPerEm)
      : 0,
  );

const table = (file: string) =>
  spans.map((span) => `  { first: ${span[0]}, widths: [${widths(font(file), span).join(', ')}] },`);

const text = `/** One run of code points with advance widths in thousandths of an em; 0: not in the font. */
export interface WidthRun {
  readonly first: number;
  readonly widths: readonly number[];
}

/** Widths of Barlow Regular and SemiBold, written by \`npx tsx src/cli/measureFont.ts\`. */
export const fontWidths: Readonly<Record<'regular' | 'bold', readonly WidthRun[]>> = {
  regular: [
${table('400Regular/Barlow_400Regular.ttf').join('\n')}
  ],
  bold: [
${table('600SemiBold/Barlow_600SemiBold.ttf').join('\n')}
  ],
};
`;

writeFileSync(join(top, 'src/drawing/fontWidths.ts'), text);
