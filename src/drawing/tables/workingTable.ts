import type { GateLayout } from '../../engine/layout.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { heldTexts } from '../opening/heldTexts.ts';
import { gateTitle } from './gateKind.ts';
import type { Column, Table } from './table.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

const columns: readonly Column[] = [
  { heading: phrase`What takes up the opening`, align: 'left', share: 2 },
  { heading: phrase`Low`, align: 'right', share: 1 },
  { heading: phrase`Planned`, align: 'right', share: 1 },
  { heading: phrase`High`, align: 'right', share: 1 },
  { heading: phraseOf('source')`From`, align: 'left', share: 2 },
];

/** The working of one opening: each term as it stands between the posts, and what they make. */
export const workingTable = (gate: GateLayout, site: Site): Table => {
  const write = (value: Parameters<typeof formatLength>[0]): string =>
    formatLength(value, fineStyle(site.lengths));
  const { terms, target } = gate.opening;
  const held = heldTexts(gate.opening, site.lengths);
  const unsure = phrase`not for sure`;
  const whole = [held?.from ?? unsure, write(target), held?.to ?? unsure];
  return {
    title: gateTitle(gate, site),
    columns,
    rows: [
      ...terms.map(({ label, low, planned, high, source }) => [
        label,
        write(low),
        write(planned),
        write(high),
        source,
      ]),
      [phrase`Opening: holds from, hold, holds to`, ...whole, phrase`planned sizes added up`],
    ],
  };
};
