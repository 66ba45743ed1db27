import { fontWidths, type WidthRun } from './fontWidths.ts';

type Weight = 'regular' | 'bold';

/** Widths by code point; 0, or past the end: not in the font. */
const lookUp = (runs: readonly WidthRun[]): Uint16Array => {
  const length = Math.max(0, ...runs.map(({ first, widths }) => first + widths.length));
  const table = new Uint16Array(length);
  for (const { first, widths } of runs) table.set(widths, first);
  return table;
};

const tables: Readonly<Record<Weight, Uint16Array>> = {
  regular: lookUp(fontWidths.regular),
  bold: lookUp(fontWidths.bold),
};

/**
 * Width of a line of text in the units of `size` (the em): the sum of the letters' advances,
 * without kerning, so never narrower than what is painted by more than a hair. A character that
 * the sheet font lacks counts as a whole em.
 */
export const textWidth = (text: string, size: number, weight: Weight): number => {
  const table = tables[weight];
  let thousandths = 0;
  for (let at = 0; at < text.length; at += 1) {
    const code = text.codePointAt(at) ?? 0;
    // a letter beyond the first 65,536 is written as two
    if (code > 0xffff) at += 1;
    thousandths += table[code] || 1000;
  }
  return (thousandths * size) / 1000;
};

/** True where the sheet font has the character. */
export const isPrintable = (letter: string): boolean =>
  (tables.regular[letter.codePointAt(0) ?? 0] ?? 0) > 0;
