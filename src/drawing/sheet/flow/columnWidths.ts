import { printable } from '../../printable.ts';
import type { Table } from '../../tables/table.ts';
import { textWidth } from '../../textWidth.ts';
import { textWords } from '../../textWords.ts';
import { letters } from '../letters.ts';

/** Clear beside the text of a cell, on each side; paper inches. */
export const cellPad = 0.07;

const wide = (text: string, weight: 'regular' | 'bold'): number =>
  textWidth(printable(text), letters.body, weight) + 2 * cellPad;

const widestWord = (text: string, weight: 'regular' | 'bold'): number =>
  Math.max(0, ...textWords(printable(text)).map((word) => wide(word, weight)));

/** Figures are not broken over lines; words are. */
const least = (text: string, align: 'left' | 'right'): number =>
  align === 'right' ? wide(text, 'regular') : widestWord(text, 'regular');

const sum = (numbers: readonly number[]): number => numbers.reduce((so, one) => so + one, 0);

/**
 * Widths of a table's columns that fill `width`, paper inches. Every column gets what its widest
 * word or figure needs; what is left goes to columns that would like to be wider, and then to all
 * by their shares. Where even the words do not fit, all are narrowed alike and cells are cut.
 */
export const columnWidths = ({ columns, rows }: Table, width: number): number[] => {
  const cellsOf = (n: number): string[] => rows.map((row) => row[n] ?? '');
  const narrow = columns.map(({ heading, align }, n) =>
    Math.max(widestWord(heading, 'bold'), ...cellsOf(n).map((cell) => least(cell, align))),
  );
  const natural = columns.map(({ heading }, n) =>
    Math.max(wide(heading, 'bold'), ...cellsOf(n).map((cell) => wide(cell, 'regular'))),
  );
  const [low, high] = [sum(narrow), sum(natural)];
  if (low >= width) return narrow.map((own) => (own * width) / low);
  if (high >= width) {
    const part = (width - low) / (high - low);
    return narrow.map((own, n) => own + ((natural[n] ?? own) - own) * part);
  }
  const shares = sum(columns.map(({ share }) => share));
  return natural.map((own, n) => own + ((width - high) * (columns[n]?.share ?? 0)) / shares);
};
