import type { Layout } from '../../engine/layout.ts';
import type { Site } from '../../site/site.ts';
import { includedRows } from '../proposal/includedRows.ts';
import type { Table } from './table.ts';
import { postRows } from './postRows.ts';
import { phrase } from '../../phrases/phrase.ts';

/** So many rows stand on a cover where they have room; the lists of the set have all. */
export const mostCounts = 9;

/**
 * What is to be built, and how much of it: fence by its build, gates by their kind, posts by sort and size. How many
 * have no room in `mostRows` rows is said in the last.
 */
export const countsTable = (site: Site, layout: Layout, mostRows: number): Table => {
  const { alike } = includedRows(site, layout);
  const all = [
    ...alike.map(({ what, amount }) => [what, amount]),
    ...postRows(layout, site.lengths),
  ];
  const rows =
    all.length <= mostRows
      ? all
      : [
          ...all.slice(0, mostRows - 1),
          [phrase`and ${all.length - mostRows + 1} more, listed in the set`, ''],
        ];
  return {
    title: phrase`To be built`,
    columns: [
      { heading: phrase`What`, align: 'left', share: 1 },
      { heading: phrase`Amount`, align: 'right', share: 0 },
    ],
    rows,
  };
};
