import type { Layout, LineLayout, Space } from '../../engine/layout.ts';
import type { PostId } from '../../engine/post.ts';

/** What tells a stretch, or a gate, of a line from the others. */
const keyOf = (space: Space): string =>
  space.kind === 'gate' ? space.gate : `stretch ${space.stretch}`;

/**
 * What the stretches and gates of a line are called: the tags of the terminal posts at their two ends,
 * `A–D`, by the spaces that are of them. A stretch goes on past a bend.
 */
export const stretchNames = (
  { runs }: LineLayout,
  { posts }: Layout,
): ((space: Space) => string) => {
  const ends = new Map<string, { first: PostId; last: PostId }>();
  for (const run of runs) {
    run.spaces.forEach((space, n) => {
      const [from, to] = [run.posts[n]?.post, run.posts[n + 1]?.post];
      if (from === undefined || to === undefined) return;
      const key = keyOf(space);
      ends.set(key, { first: ends.get(key)?.first ?? from, last: to });
    });
  }
  const tag = (id: PostId | undefined): string => (id && posts.get(id)?.tag) || '?';
  return (space) => {
    const own = ends.get(keyOf(space));
    return `${tag(own?.first)}–${tag(own?.last)}`;
  };
};
