import { fontWidths, type WidthRun } from './fontWidths.ts';

type Weight = 'regular' | 'bold';

const lookUp = (runs: readonly WidthRun[]): ReadonlyMap<number, number> =>
  new Map(
    runs.flatMap(({ first, widths }) =>
      widths.flatMap((width, n) => (width > 0 ? [[first + n, width] as const] : [])),
    ),
  );

const tables: Readonly<Record<Weight, ReadonlyMap<number, number>>> = {
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
  for (const letter of text) thousandths += table.get(letter.codePointAt(0) ?? 0) ?? 1000;
  return (thousandths * size) / 1000;
};

/** True where the sheet font has the character. */
export const isPrintable = (letter: string): boolean =>
  tables.regular.has(letter.codePointAt(0) ?? 0);
