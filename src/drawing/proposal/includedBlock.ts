import type { Block, Stack } from '../sheet/flow/block.ts';
import { heading } from '../sheet/flow/heading.ts';
import { layTable } from '../sheet/flow/layTable.ts';
import { stackBlocks } from '../sheet/flow/stackBlocks.ts';
import type { Column } from '../tables/table.ts';
import type { Included, IncludedRow } from './includedRows.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The heading over the rows says what they are: the columns need none. */
const columns: readonly Column[] = [
  { heading: '', align: 'left', share: 1 },
  { heading: '', align: 'right', share: 0 },
];

const laid = (rows: readonly IncludedRow[], width: number): Stack =>
  layTable({ title: '', columns, rows: rows.map(({ what, amount }) => [what, amount]) }, width);

const asBlock = ({ rows }: Stack, width: number): Block =>
  stackBlocks([heading(phrase`What is included`, width), ...rows]);

/** As many rows as a height holds, and one that says how many more there are. */
const cut = (rows: readonly IncludedRow[], width: number, height: number): Block => {
  for (let count = rows.length - 1; count > 0; count -= 1) {
    const more = {
      what: phrase`And ${rows.length - count} more that are not listed here`,
      amount: '',
    };
    const block = asBlock(laid([...rows.slice(0, count), more], width), width);
    if (block.height <= height) return block;
  }
  const all = { what: phrase`${rows.length} sorts of fence and gate, not listed here`, amount: '' };
  return asBlock(laid([all], width), width);
};

/**
 * What is included, as a table of a width and no higher than a height, paper inches: everything by itself
 * where that has room, else what is alike together, else as much as has room and how much more there is.
 */
export const includedBlock = ({ each, alike }: Included, width: number, height: number): Block => {
  const blocks = [each, alike].map((rows) => asBlock(laid(rows, width), width));
  return blocks.find((block) => block.height <= height) ?? cut(alike, width, height);
};
