import type { Atom } from '../../atom.ts';
import { rectangleOutline, segmentsOutline } from '../../explode/polylineOutline.ts';
import { printable } from '../../printable.ts';
import { textWidth } from '../../textWidth.ts';
import { wrapText } from '../../wrapText.ts';
import { letters, lineSpacing } from '../letters.ts';
import { lineOfText } from '../lineOfText.ts';
import type { Block, Stack } from './block.ts';
import { cellPad } from './columnWidths.ts';
import { cellAt, groupCell } from './cellAt.ts';
import { subheading } from './heading.ts';
import { inGroups } from './inGroups.ts';
import { stackBlocks } from './stackBlocks.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** A column of a form: `hand` is the room that a hand needs in it, paper inches; 0 for print alone. */
export interface FormColumn {
  readonly heading: string;
  readonly hand: number;
  /** Of the width that is left over; 0 for none. */
  readonly share: number;
  /** A box to tick stands in every cell of it. */
  readonly tick?: true;
}

/** A form to fill in by hand: what is known is printed in, an empty cell is a blank. */
export interface Form {
  readonly title: string;
  readonly columns: readonly FormColumn[];
  readonly rows: readonly (readonly string[])[];
  /** What each row belongs to, said over the first of those that belong together. */
  readonly groups?: readonly string[];
}

/** High enough to write in with gloves on; paper inches, ours. */
export const formRow = 0.34;
/** What somebody typed is cut where it is longer; paper inches. */
const longest = 1.9;
/** A box to tick, paper inches a side. */
const box = 0.17;
const line = letters.body * lineSpacing;
const thin = { ink: 'line', width: 0.007, dash: [] } as const;

const wide = (text: string, weight: 'regular' | 'bold'): number =>
  textWidth(printable(text), letters.body, weight) + 2 * cellPad + 0.01;

const widestWord = (heading: string): number =>
  Math.max(0, ...heading.split(' ').map((word) => wide(word, 'bold')));

const sum = (numbers: readonly number[]): number => numbers.reduce((so, one) => so + one, 0);

/** Widths of a form's columns; where not even the least fit all are narrowed alike and print is cut. */
const widthsOf = ({ columns, rows }: Form, width: number): number[] => {
  const least = columns.map(({ heading, hand }, n) =>
    Math.max(
      hand,
      widestWord(heading),
      ...rows.map((row) => Math.min(longest, wide(row[n] ?? '', hand > 0 ? 'bold' : 'regular'))),
    ),
  );
  const total = sum(least);
  if (total >= width) return least.map((own) => (own * width) / total);
  const shares = sum(columns.map(({ share }) => share)) || 1;
  return least.map((own, n) => own + ((width - total) * (columns[n]?.share ?? 0)) / shares);
};

/** Where each column begins, and where the last one ends. */
const edgesOf = (widths: readonly number[]): number[] =>
  widths.reduce((so, own) => [...so, (so.at(-1) ?? 0) + own], [0]);

const ruled = (edges: readonly number[], height: number): Atom => {
  const [left, right] = [edges[0] ?? 0, edges.at(-1) ?? 0];
  const across = [
    { x: left, y: height },
    { x: right, y: height },
  ] as const;
  const down = edges.map(
    (x) =>
      [
        { x, y: 0 },
        { x, y: height },
      ] as const,
  );
  return { do: 'stroke', pen: thin, outline: segmentsOutline([across, ...down]) };
};

const headOf = ({ columns }: Form, edges: readonly number[]): Block => {
  const cells = columns.map(({ heading }, n) => {
    const width = (edges[n + 1] ?? 0) - (edges[n] ?? 0) - 2 * cellPad;
    return wrapText(heading, { width, size: letters.body, weight: 'bold' });
  });
  const height = Math.max(1, ...cells.map(({ length }) => length)) * line + 0.1;
  const atoms = cells.flatMap((lines, n) => {
    const look = { weight: 'bold', cell: cellAt(0, n, columns.length) } as const;
    return lines.flatMap((text, row) =>
      lineOfText(text, (edges[n] ?? 0) + cellPad, 0.05 + (row + 0.5) * line, look),
    );
  });
  const rule = segmentsOutline([
    [
      { x: 0, y: height },
      { x: edges.at(-1) ?? 0, y: height },
    ],
  ]);
  return {
    height,
    atoms: [...atoms, { do: 'stroke', pen: { ...thin, width: 0.014 }, outline: rule }],
  };
};

const rowOf = ({ columns, rows }: Form, row: number, edges: readonly number[]): Block => {
  const cells = rows[row] ?? [];
  const atoms = columns.flatMap(({ tick, hand }, n): Atom[] => {
    const [x, to] = [edges[n] ?? 0, edges[n + 1] ?? 0];
    if (tick) {
      const at = { x: (x + to - box) / 2, y: (formRow - box) / 2 };
      return [{ do: 'stroke', pen: thin, outline: rectangleOutline(at, box, box) }];
    }
    const weight = hand > 0 ? 'bold' : 'regular';
    const width = to - x - 2 * cellPad + 1e-9;
    const look = { weight, width, cell: cellAt(row + 1, n, columns.length) } as const;
    return lineOfText(cells[n] ?? '', x + cellPad, formRow / 2, look);
  });
  return { height: formRow, atoms: [...atoms, ruled(edges, formRow)] };
};

const groupOf = (name: string, row: number, edges: readonly number[]): Block => {
  const width = edges.at(-1) ?? 0;
  const named = lineOfText(name, cellPad, 0.05 + line / 2, {
    weight: 'bold',
    width: width - 2 * cellPad,
    cell: groupCell(row + 1, edges.length - 1),
  });
  return { height: line + 0.1, atoms: [...named, ruled([0, width], line + 0.1)] };
};

/**
 * A form laid out to fill a width, in boxes to write in: what is known in them is printed, bold where
 * else a hand would write. Rows are `formRow` high; title, headings and the name of a group are repeated where it goes on.
 */
export const layForm = (form: Form, width: number): Stack => {
  const edges = edgesOf(widthsOf(form, width));
  const head = headOf(form, edges);
  const { title, groups = [] } = form;
  const rows = inGroups(
    form.rows.map((_, row) => rowOf(form, row, edges)),
    groups,
    { lay: (name, row) => groupOf(name, row, edges), width: width - 2 * cellPad },
  );
  return {
    head: stackBlocks([subheading(title, width), head]),
    again: stackBlocks([subheading(phrase`${title}, continued`, width), head]),
    rows,
    gap: 0.24,
  };
};
