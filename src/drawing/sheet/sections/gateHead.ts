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

/** What is written by hand, and what of it is recorded. */
type Blank = readonly [label: string, known: string];

const blanks = (asSet: AsSet | null, write: (length: number) => string): readonly Blank[] => [
  ['As set: top', asSet === null ? '' : write(asSet.top)],
  ['bottom', asSet === null || asSet.bottom === null ? '' : write(asSet.bottom)],
  ['by', asSet?.by ?? ''],
  ['on', asSet?.on ?? ''],
];

/** The rule under a row, and from one thing in it to the next; paper inches. */
const rule = 0.25;
const clear = 0.08;
/** What a length of feet, inches and sixteenths takes by hand, at least; paper inches, ours. */
const leastHand = 0.75;

/** Labels in a row with a rule behind each to write on, which share what room there is. */
const handRow = (row: readonly Blank[], width: number): Block => {
  const taken = row.map(([label]) => textWidth(printable(label), letters.body, 'regular') + clear);
  const rest = width - taken.reduce((so, one) => so + one, 0) - clear * (row.length - 1);
  const each = Math.max(0, rest / row.length);
  const y = rule - letters.body / 2 - 0.02;
  let x = 0;
  const atoms = row.flatMap(([label, known], n): Atom[] => {
    const [at, from] = [x, x + (taken[n] ?? 0)];
    x = from + each + clear;
    const ends = [
      { x: from, y: rule },
      { x: from + each, y: rule },
    ] as const;
    const pen = { ink: 'line', width: 0.01, dash: [] } as const;
    return [
      ...lineOfText(label, at, y, { ink: 'dimension' }),
      ...lineOfText(known, from, y, { weight: 'bold', width: each }),
      { do: 'stroke', pen, outline: segmentsOutline([ends]) },
    ];
  });
  return { height: rule + 0.05, atoms };
};

/** The least width of a row of blanks. */
const least = (row: readonly Blank[]): number =>
  row.reduce(
    (so, [label]) => so + textWidth(printable(label), letters.body, 'regular') + 2 * clear,
    row.length * leastHand - clear,
  );

/** A title with the row beside it, or under it where there is no room. */
const titleAndRow = (title: string, row: readonly Blank[], width: number): Block => {
  const own = textWidth(printable(title), letters.strong, 'bold') + 4 * clear;
  if (own + least(row) > width) return stackBlocks([subheading(title, width), handRow(row, width)]);
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
