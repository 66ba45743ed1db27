import { postName } from '../../../engine/set/postName.ts';
import type { GateLayout, Layout } from '../../../engine/layout.ts';
import type { Gate } from '../../../site/gate.ts';

/** What the fields call a gate post: by what it carries, with the tag that it has on the sheet. */
export const postTitle = (
  drawn: Gate,
  { posts }: Pick<GateLayout, 'posts'>,
  { layout, end }: { readonly layout: Pick<Layout, 'posts'>; readonly end: 'start' | 'end' },
): string => {
  const tag = posts === null ? undefined : layout.posts[posts[end]]?.tag;
  if (drawn.way.kind === 'gap') return `Post ${tag ?? `at the ${end}`}`;
  const name = postName(drawn, end).replace(/^the (.)/, (_, first: string) => first.toUpperCase());
  return tag === undefined ? name : `${name} (${tag})`;
};
