import type { Layout } from '../../engine/layout.ts';
import type { TapeReadings } from '../../engine/posts/tapeReadings.ts';

/** The tag of the post that a tape is hooked at, or nearest to. */
export const hookTag = (
  { posts }: Pick<TapeReadings, 'posts'>,
  layout: Pick<Layout, 'posts'>,
): string => {
  const [hook] = posts;
  return (hook && layout.posts.get(hook.post)?.tag) || '?';
};
