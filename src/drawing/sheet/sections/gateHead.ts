import type { GateLayout } from '../../../engine/layout.ts';
import { writer } from '../../../engine/set/setCase.ts';
import type { AsSet } from '../../../site/asSet.ts';
import type { Site } from '../../../site/site.ts';
import type { Atom } from '../../atom.ts';
import { segmentsOutline } from '../../explode/polylineOutline.ts';
import { moveAtoms } from '../../moveAtoms.ts';
import { setWords } from '../../opening/setWords.ts';
import { printable } from '../../printable.ts';
import { textWidth } from '../../textWidth.ts';
import type { Block } from '../flow/block.ts';
import { subheading } from '../flow/heading.ts';
import { paragraph } from '../flow/paragraph.ts';
import { stackBlocks } from '../flow/stackBlocks.ts';
import { letters } from '../letters.ts';
import { lineOfText } from '../lineOfText.ts';

/** What is written by hand, the room that it takes (paper inches, ours), and what is recorded. */
interface Blank {
  readonly label: string;
  readonly hand: number;
  readonly known: string;
}

/** Room for a length of feet, inches and a fraction, for initials and for a date. */
const hands = { length: 0.78, by: 0.5, on: 0.65 } as const;

const blanks = (asSet: AsSet | null, write: (length: number) => string): readonly Blank[] => {
  const bottom = asSet?.bottom ?? null;
  return [
    { label: 'As set: top', hand: hands.length, known: asSet === null ? '' : write(asSet.top) },
    { label: 'bottom', hand: hands.length, known: bottom === null ? '' : write(bottom) },
    { label: 'by', hand: hands.by, known: asSet?.by ?? '' },
    { label: 'on', hand: hands.on, known: asSet?.on ?? '' },
  ];
};

/** The rule under a row, and from one thing in it to the next; paper inches. */
const rule = 0.25;
const clear = 0.08;
/** What somebody typed is cut where it is longer; paper inches. */
const longest = 1.4;

const labelRoom = ({ label }: Blank): number =>
  textWidth(printable(label), letters.body, 'regular') + clear;

/** Over a rule there is room for a hand and for all of a length. */
const least = ({ hand, known }: Blank): number =>
  Math.max(hand, Math.min(longest, textWidth(printable(known), letters.body, 'bold') + 0.01));

const sum = (numbers: readonly number[]): number => numbers.reduce((so, one) => so + one, 0);

const leastRow = (row: readonly Blank[]): number =>
  sum(row.map((blank) => labelRoom(blank) + least(blank))) + clear * (row.length - 1);

/** Labels in a row with a rule behind each to write on, which share what room is left. */
const handRow = (row: readonly Blank[], width: number): Block => {
  const more = Math.max(0, width - leastRow(row)) / row.length;
  const y = rule - letters.body / 2 - 0.02;
  let x = 0;
  const atoms = row.flatMap((blank): Atom[] => {
    const [at, from] = [x, x + labelRoom(blank)];
    const to = from + least(blank) + more;
    x = to + clear;
    const ends = [
      { x: from, y: rule },
      { x: to, y: rule },
    ] as const;
    const pen = { ink: 'line', width: 0.01, dash: [] } as const;
    return [
      ...lineOfText(blank.label, at, y, { ink: 'dimension' }),
      ...lineOfText(blank.known, from, y, { weight: 'bold', width: to - from }),
      { do: 'stroke', pen, outline: segmentsOutline([ends]) },
    ];
  });
  return { height: rule + 0.05, atoms };
};

/** A title with the row beside it, or under it where there is no room. */
const titleAndRow = (title: string, row: readonly Blank[], width: number): Block => {
  const own = textWidth(printable(title), letters.strong, 'bold') + 4 * clear;
  if (own + leastRow(row) > width)
    return stackBlocks([subheading(title, width), handRow(row, width)]);
  const beside = handRow(row, width - own);
  const y = rule - letters.strong / 2 - 0.015;
  const text = lineOfText(title, 0, y, { size: letters.strong, weight: 'bold' });
  return { height: beside.height, atoms: [...text, ...moveAtoms(beside.atoms, own, 0)] };
};

const inks = { holds: 'text', ask: 'text', stop: 'stop' } as const;

/**
 * The title of a gate's detail, `width` wide in paper inches, with room to write by hand what was
 * set. What is in the set record is printed there, and what comes of it stands under it.
 */
export const gateHead = (
  title: string,
  layout: GateLayout,
  { site, width }: { readonly site: Site; readonly width: number },
): Block => {
  const gate = site.gates[layout.id];
  const words = gate === undefined ? null : setWords(site, gate, layout.opening);
  return stackBlocks([
    titleAndRow(title, blanks(gate?.asSet ?? null, writer({ site })), width),
    ...(words === null
      ? []
      : paragraph(`As set: ${words.words}. ${words.gap}`, width, inks[words.level])),
  ]);
};
