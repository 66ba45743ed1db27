import type { Layout } from '../engine/layout.ts';
import type { PostId } from '../engine/post.ts';
import type { Site } from '../site/site.ts';
import { legNear } from './legNear.ts';
import type { LegPlace } from './legNear.ts';

/** The ids of pull posts that stand where the grade changes, and nowhere else. */
const atBreak = /:break-\d+$/;

/**
 * Where on its leg a line post stands, or a pull post that is one of the line posts; null for any
 * other post, and one that is not there.
 */
export const postPlace = (
  site: Site,
  { posts }: Pick<Layout, 'posts'>,
  id: PostId,
): LegPlace | null => {
  const post = posts.get(id);
  const line = post?.lines[0];
  if (post === undefined || line === undefined) return null;
  if (post.kind !== 'line' && (post.kind !== 'pull' || atBreak.test(id))) return null;
  return legNear(site, post.at, line);
};
