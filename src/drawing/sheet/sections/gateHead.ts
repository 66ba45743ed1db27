import type { GateLayout } from '../../../engine/layout.ts';
import { writer } from '../../../engine/set/setCase.ts';
import type { AsSet } from '../../../site/asSet.ts';
import type { Site } from '../../../site/site.ts';
import { moveAtoms } from '../../moveAtoms.ts';
import { setWords } from '../../opening/setWords.ts';
import { printable } from '../../printable.ts';
import { textWidth } from '../../textWidth.ts';
import type { Block } from '../flow/block.ts';
import { handRow, handRule, leastHandRow, type Blank } from '../flow/handRow.ts';
import { subheading } from '../flow/heading.ts';
import { paragraph } from '../flow/paragraph.ts';
import { stackBlocks } from '../flow/stackBlocks.ts';
import { letters } from '../letters.ts';
import { lineOfText } from '../lineOfText.ts';
import { phrase, phraseOf } from '../../../phrases/phrase.ts';

/** Room for a length of feet, inches and a fraction, for initials and for a date. */
const hands = { length: 0.78, by: 0.5, on: 0.65 } as const;

const blanks = (asSet: AsSet | null, write: (length: number) => string): readonly Blank[] => {
  const bottom = asSet?.bottom ?? null;
  return [
    {
      label: phrase`As set: top`,
      hand: hands.length,
      known: asSet === null ? '' : write(asSet.top),
    },
    {
      label: phraseOf('opening')`bottom`,
      hand: hands.length,
      known: bottom === null ? '' : write(bottom),
    },
    { label: phraseOf('person')`by`, hand: hands.by, known: asSet?.by ?? '' },
    { label: phraseOf('day')`on`, hand: hands.on, known: asSet?.on ?? '' },
  ];
};

/** From the title to the row beside it, paper inches. */
const apart = 0.32;

/** A title with the row beside it, or under it where there is no room. */
const titleAndRow = (title: string, row: readonly Blank[], width: number): Block => {
  const own = textWidth(printable(title), letters.strong, 'bold') + apart;
  if (own + leastHandRow(row) > width)
    return stackBlocks([subheading(title, width), handRow(row, width)]);
  const beside = handRow(row, width - own);
  const y = handRule - letters.strong / 2 - 0.015;
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
      : paragraph(phrase`As set: ${words.words}. ${words.gap}`, width, inks[words.level])),
  ]);
};
