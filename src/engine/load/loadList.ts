import type { Site } from '../../site/site.ts';
import type { Layout } from '../layout.ts';
import type { LoadLine } from '../loadLine.ts';
import { countConcrete } from './countConcrete.ts';
import { countFabric } from './countFabric.ts';
import { countGates } from './countGates.ts';
import { countPlates } from './countPlates.ts';
import { countPosts } from './countPosts.ts';

const byUse = (a: LoadLine, b: LoadLine): number =>
  a.item < b.item ? -1 : a.item > b.item ? 1 : (b.each ?? 0) - (a.each ?? 0);

/**
 * The first load list: posts by use, pipe and length, fabric and rail by length, gate parts,
 * concrete. A gate that is not placed is still ordered: its parts count, its posts do not exist.
 */
export const loadList = (laid: Pick<Layout, 'lines' | 'posts'>, site: Site): LoadLine[] => {
  const posts = Object.values(laid.posts);
  const gates = (Object.keys(site.gates) as (keyof Site['gates'])[]).toSorted();
  return [
    ...countPosts(posts).toSorted(byUse),
    ...countFabric(Object.values(laid.lines), site),
    ...countGates(gates, site).toSorted(byUse),
    ...countConcrete(posts),
    ...countPlates(posts),
  ];
};
