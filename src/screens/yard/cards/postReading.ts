import type { Layout } from '../../../engine/layout.ts';
import type { PostId } from '../../../engine/post.ts';
import { tapeReadings } from '../../../engine/posts/tapeReadings.ts';
import type { Site } from '../../../site/site.ts';
import type { Inches } from '../../../units/inches.ts';

/** What the tape reads at a post, and the tag of the post at which it is hooked. */
export interface PostReading {
  readonly reading: Inches;
  readonly hookedAt: string;
}

/** The reading at a post on the first run that it is on; null for a post that is on none. */
export const postReading = (site: Site, layout: Layout, id: PostId): PostReading | null => {
  const runs = Object.values(layout.lines).flatMap((line) => line.runs);
  const run = runs.find(({ posts }) => posts.some(({ post }) => post === id));
  const hook = run === undefined ? undefined : site.lines[run.line]?.hook;
  if (run === undefined || hook === undefined) return null;
  const { posts } = tapeReadings(run, hook, site.lengths);
  const found = posts.find(({ post }) => post === id);
  if (found === undefined) return null;
  const first = posts[0]?.post ?? id;
  return { reading: found.reading, hookedAt: layout.posts.get(first)?.tag ?? '' };
};
