import type { Layout } from '../../../engine/layout.ts';
import { postTies } from '../../../engine/ties/postTies.ts';
import type { Site } from '../../../site/site.ts';
import { tieCheckTable, tieTable } from '../../tables/tieTables.ts';
import { tieTexts } from '../../tables/tieTexts.ts';
import type { Stack } from '../flow/block.ts';
import { heading } from '../flow/heading.ts';
import { layTable } from '../flow/layTable.ts';
import { loose } from '../flow/stacks.ts';
import { unbroken } from '../flow/unbroken.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** How every terminal post is found from marks on site; nothing without one. */
export const tiesSection = (site: Site, layout: Layout, width: number): Stack[] => {
  const ties = postTies(site, layout);
  if (ties.length === 0) return [];
  const texts = tieTexts(ties, layout, site).flatMap((text) => unbroken(text, width));
  const head = loose(heading(phrase`Ties`, width), texts, 0.3);
  const tables = [tieTable(ties, layout, site), tieCheckTable(ties, layout, site)];
  // where nothing is tied there is nothing to list: the words say why
  if (ties.every(({ tapes, offset }) => tapes === null && offset === null)) return [head];
  return [
    head,
    ...tables.filter(({ rows }) => rows.length > 0).map((table) => layTable(table, width)),
  ];
};
