import { slack } from '../../geometry/tolerance.ts';
import type { SpecId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Layout, LineLayout } from '../layout.ts';
import { isTerminal, type Post, type PostId } from '../post.ts';

/** What a post is used for, as builds name their pipes. */
const postUses = ['line post', 'terminal post', 'gate post'] as const;
export type PostUse = (typeof postUses)[number];

/** Of the posts of one use, pipe and hole in a build the one that holds the most fence, and how much: inches along it. */
export interface HeldPost {
  readonly use: PostUse;
  readonly post: Post;
  readonly wide: Inches;
}

const useOf = (post: Post): PostUse => {
  if (post.kind === 'gate' || post.gates.length > 0) return 'gate post';
  return isTerminal(post) ? 'terminal post' : 'line post';
};

/** How much fence each post of a build holds: half of every bay and closed gate beside it. */
const widthsHeld = (lines: readonly LineLayout[]): ReadonlyMap<PostId, number> => {
  const held = new Map<PostId, number>();
  for (const { runs } of lines) {
    for (const { posts, spaces } of runs) {
      spaces.forEach(({ length }, n) => {
        for (const stop of [posts[n], posts[n + 1]]) {
          if (stop !== undefined) held.set(stop.post, (held.get(stop.post) ?? 0) + length / 2);
        }
      });
    }
  }
  return held;
};

const widestOf = (
  held: ReadonlyMap<PostId, number>,
  posts: Layout['posts'],
): readonly HeldPost[] => {
  const widest = new Map<string, HeldPost>();
  for (const [id, wide] of held) {
    const post = posts.get(id);
    // what stands on a wall is for a licensed engineer, and told to be
    if (post === undefined || post.wall !== null) continue;
    const use = useOf(post);
    const { od, pipe, hole } = post;
    const alike = [use, od, pipe, hole.diameter, hole.depth].join('|');
    const most = widest.get(alike)?.wide ?? 0;
    if (wide > most + slack) widest.set(alike, { use, post, wide: inches(wide) });
  }
  return postUses.flatMap((use) => [...widest.values()].filter((one) => one.use === use));
};

/**
 * Of each build the post of every use, pipe and hole that holds the most fence, line posts first. A gate post holds half
 * of its closed gate as if that were fence; a corner post the halves on both sides as if they were in line.
 * Posts on walls are left out.
 */
export const heldPosts = (
  site: Pick<Site, 'lines'>,
  { lines, posts }: Pick<Layout, 'lines' | 'posts'>,
): ReadonlyMap<SpecId, readonly HeldPost[]> => {
  const built = new Map<SpecId, LineLayout[]>();
  for (const line of Object.values<LineLayout>(lines)) {
    const spec = site.lines[line.id]?.spec;
    if (spec !== undefined) built.set(spec, [...(built.get(spec) ?? []), line]);
  }
  return new Map([...built].map(([spec, own]) => [spec, widestOf(widthsHeld(own), posts)]));
};
