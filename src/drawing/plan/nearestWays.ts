import type { Layout, LineLayout, Run } from '../../engine/layout.ts';
import type { Post, PostId } from '../../engine/post.ts';
import type { SitePoint } from '../../geometry/point.ts';

const way = (from: Post, to: Post): SitePoint => ({
  x: to.at.x - from.at.x,
  y: to.at.y - from.at.y,
});

const waysFrom = (run: Run, n: number, layout: Layout): SitePoint[] => {
  const postAt = (at: number): Post | undefined => layout.posts[run.posts[at]?.post ?? 'post:'];
  const post = postAt(n);
  if (post === undefined) return [];
  return [postAt(n - 1), postAt(n + 1)].flatMap((next) =>
    next === undefined ? [] : [way(post, next)],
  );
};

/**
 * From every post that stands in a run the way to the nearest of its neighbours along the fence,
 * inches on the ground. A post without a neighbour has none.
 */
export const nearestWays = (layout: Layout): ReadonlyMap<PostId, SitePoint> => {
  const ways = new Map<PostId, SitePoint>();
  const keep = (post: PostId, found: SitePoint): void => {
    const known = ways.get(post);
    if (known === undefined || Math.hypot(found.x, found.y) < Math.hypot(known.x, known.y))
      ways.set(post, found);
  };
  for (const { runs } of Object.values<LineLayout>(layout.lines))
    for (const run of runs)
      run.posts.forEach(({ post }, n) => {
        for (const found of waysFrom(run, n, layout)) keep(post, found);
      });
  return ways;
};
