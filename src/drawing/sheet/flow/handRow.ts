import type { Atom } from '../../atom.ts';
import { segmentsOutline } from '../../explode/polylineOutline.ts';
import { printable } from '../../printable.ts';
import { textWidth } from '../../textWidth.ts';
import { letters } from '../letters.ts';
import { lineOfText } from '../lineOfText.ts';
import type { Block } from './block.ts';

/** What is written by hand, the room that it takes (paper inches, ours), and what is known of it already. */
export interface Blank {
  readonly label: string;
  readonly hand: number;
  readonly known: string;
}

/** Where the rule under a row lies, below its top; paper inches. */
export const handRule = 0.25;
/** From one thing in a row to the next, paper inches. */
const clear = 0.08;
/** What somebody typed is cut where it is longer; paper inches. */
const longest = 1.4;

const labelRoom = ({ label }: Blank): number =>
  textWidth(printable(label), letters.body, 'regular') + clear;

/** Over a rule there is room for a hand and for all of a length. */
const least = ({ hand, known }: Blank): number =>
  Math.max(hand, Math.min(longest, textWidth(printable(known), letters.body, 'bold') + 0.01));

const sum = (numbers: readonly number[]): number => numbers.reduce((so, one) => so + one, 0);

/** The least width of a row of blanks, paper inches. */
export const leastHandRow = (row: readonly Blank[]): number =>
  sum(row.map((blank) => labelRoom(blank) + least(blank))) + clear * (row.length - 1);

/** Labels in a row with a rule behind each to write on, which share what room is left. */
export const handRow = (row: readonly Blank[], width: number): Block => {
  const more = Math.max(0, width - leastHandRow(row)) / row.length;
  const y = handRule - letters.body / 2 - 0.02;
  let x = 0;
  const atoms = row.flatMap((blank): Atom[] => {
    const [at, from] = [x, x + labelRoom(blank)];
    const to = from + least(blank) + more;
    x = to + clear;
    const ends = [
      { x: from, y: handRule },
      { x: to, y: handRule },
    ] as const;
    const pen = { ink: 'line', width: 0.01, dash: [] } as const;
    return [
      ...lineOfText(blank.label, at, y, { ink: 'dimension' }),
      ...lineOfText(blank.known, from, y, { weight: 'bold', width: to - from }),
      { do: 'stroke', pen, outline: segmentsOutline([ends]) },
    ];
  });
  return { height: handRule + 0.05, atoms };
};
