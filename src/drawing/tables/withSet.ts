import type { GateLayout } from '../../engine/layout.ts';
import { writer } from '../../engine/set/setCase.ts';
import type { Site } from '../../site/site.ts';
import type { Table } from './table.ts';
import { phrase } from '../../phrases/phrase.ts';

const setText = ({ id }: GateLayout, site: Site): string => {
  const asSet = site.gates[id]?.asSet ?? null;
  if (asSet === null) return '';
  const write = writer({ site });
  const top = write(asSet.top);
  return asSet.bottom === null
    ? phrase`${top} top`
    : phrase`${top} top, ${write(asSet.bottom)} bottom`;
};

/**
 * A table with a row for each of some gates, with a last column of what was set; as it is where
 * none of them was.
 */
export const withSet = (table: Table, gates: readonly GateLayout[], site: Site): Table => {
  const texts = gates.map((gate) => setText(gate, site));
  if (texts.every((text) => text === '')) return table;
  return {
    ...table,
    columns: [...table.columns, { heading: phrase`As set`, align: 'left', share: 1 }],
    rows: table.rows.map((row, n) => [...row, texts[n] ?? '']),
  };
};
