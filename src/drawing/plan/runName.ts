import type { Layout, Run } from '../../engine/layout.ts';

/** What drawings and tables call a run: the tags of its first and last post, as `A–B`. */
export const runName = (run: Run, { posts }: Layout): string => {
  const [first, last] = [run.posts[0], run.posts.at(-1)];
  const tag = (end: typeof first): string => (end && posts.get(end.post)?.tag) || '?';
  return `${tag(first)}–${tag(last)}`;
};
