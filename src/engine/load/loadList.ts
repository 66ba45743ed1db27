import type { Site } from '../../site/site.ts';
import type { Carry } from '../carry/carry.ts';
import type { LoadLine } from '../loadLine.ts';
import { countConcrete } from './countConcrete.ts';
import { countFabric } from './countFabric.ts';
import { countGates } from './countGates.ts';
import { countPlates } from './countPlates.ts';
import { countPosts } from './countPosts.ts';
import type { LoadGroup } from './loadGroup.ts';
import type { LaidLines } from '../posts/layLines.ts';

const byUse = (a: LoadLine, b: LoadLine): number =>
  a.item < b.item ? -1 : a.item > b.item ? 1 : (b.each ?? 0) - (a.each ?? 0);

/**
 * The first load list: posts by use, pipe and length, fabric and rail by length, gate parts,
 * concrete. A gate that is not placed is still ordered: its parts count, its posts do not exist.
 */
export const loadList = (
  { met, stands, lines }: Pick<LaidLines, 'met' | 'stands' | 'lines'>,
  site: Site,
  carry: Carry,
): LoadLine[] => {
  const groups: readonly LoadGroup[] = [...met, { key: 'beside', posts: stands }];
  const gates = (Object.keys(site.gates) as (keyof Site['gates'])[]).toSorted();
  return [
    ...countPosts(groups, carry).toSorted(byUse),
    ...countFabric(Object.values(lines), site, carry),
    ...countGates(gates, site).toSorted(byUse),
    ...countConcrete(groups, carry),
    ...countPlates(groups, carry),
  ];
};
