import { leavesOf } from '../../../engine/gate/termsOf.ts';
import { hungEnd } from '../../../engine/set/postName.ts';
import type { GateLayout, Layout } from '../../../engine/layout.ts';
import type { Gate } from '../../../site/gate.ts';
import { phrase } from '../../../phrases/phrase.ts';

const called = (gate: Gate, end: 'start' | 'end'): string => {
  if (leavesOf(gate).length > 1) return phrase`Post of leaf ${end === 'start' ? 1 : 2}`;
  if (end !== hungEnd(gate)) return phrase`Latch post`;
  return gate.way.kind === 'cantilever' ? phrase`Roller post` : phrase`Hinge post`;
};

/** What the fields call a gate post: by what it carries, with the tag that it has on the sheet. */
export const postTitle = (
  drawn: Gate,
  { posts }: Pick<GateLayout, 'posts'>,
  { layout, end }: { readonly layout: Pick<Layout, 'posts'>; readonly end: 'start' | 'end' },
): string => {
  const tag = posts === null ? undefined : layout.posts.get(posts[end])?.tag;
  if (drawn.way.kind === 'gap') {
    if (tag !== undefined) return phrase`Post ${tag}`;
    return end === 'start' ? phrase`Post at the start` : phrase`Post at the end`;
  }
  const name = called(drawn, end);
  return tag === undefined ? name : `${name} (${tag})`;
};
