import type { Atom } from '../../atom.ts';
import { subheading } from '../flow/heading.ts';
import type { Block } from '../flow/block.ts';
import { letters, lineSpacing } from '../letters.ts';
import { lineOfText } from '../lineOfText.ts';
import type { Link } from '../page.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** A sheet as the index lists it: sheets that follow one another under one name are one entry. */
export interface IndexEntry {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

/** The index as a block, and links from its rows, from its own upper left corner. */
export interface SheetIndex extends Block {
  readonly links: readonly Link[];
}

const line = letters.body * lineSpacing;
/** Room for the numbers of the sheets, paper inches. */
const numbers = 0.62;

/** The names of sheets, the first being sheet `first`, put together where neighbours are alike. */
export const indexEntries = (names: readonly string[], first: number): readonly IndexEntry[] => {
  const entries: IndexEntry[] = [];
  names.forEach((name, n) => {
    const last = entries.at(-1);
    const number = first + n;
    if (last?.name === name) entries[entries.length - 1] = { ...last, to: number };
    else entries.push({ name, from: number, to: number });
  });
  return entries;
};

const numberText = ({ from, to }: IndexEntry): string =>
  from === to ? `${from}` : `${from}–${to}`;

/**
 * The sheets of a set with what is on them, as many rows as a height has room for; how many more
 * sheets there are is said in the last. Paper inches.
 */
export const sheetIndex = (
  entries: readonly IndexEntry[],
  width: number,
  height: number,
): SheetIndex => {
  const head = subheading(phrase`Sheets`, width);
  const most = Math.max(2, Math.floor((height - head.height) / line));
  const shown = entries.length <= most ? entries : entries.slice(0, most - 1);
  const left = entries.slice(shown.length).reduce((sum, { from, to }) => sum + to - from + 1, 0);
  const rowAt = (n: number): number => head.height + n * line;
  const rows = shown.flatMap((entry, n): Atom[] => [
    ...lineOfText(numberText(entry), 0, rowAt(n) + line / 2, { weight: 'bold', width: numbers }),
    ...lineOfText(entry.name, numbers, rowAt(n) + line / 2, { width: width - numbers }),
  ]);
  const more =
    left === 0
      ? []
      : lineOfText(phrase`and ${left} more`, numbers, rowAt(shown.length) + line / 2, {
          width: width - numbers,
        });
  const count = shown.length + (left === 0 ? 0 : 1);
  return {
    height: head.height + count * line,
    atoms: [...head.atoms, ...rows, ...more],
    links: shown.map(({ from }, n) => ({
      rect: { x: 0, y: rowAt(n), width, height: line },
      page: from,
    })),
  };
};
