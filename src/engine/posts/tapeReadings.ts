import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { roundLength } from '../../units/roundLength.ts';
import type { Run } from '../layout.ts';
import type { PostId } from '../post.ts';
import { fromHook } from './fromHook.ts';

/** A post by the tape from the hook, and by one that is hooked at the other end of the run; inches. */
export interface PostReading {
  readonly post: PostId;
  readonly reading: Inches;
  /** With the reading it makes the whole run, so that both lead to one place on the ground. */
  readonly back: Inches;
}

/** A run as the tape reads it, from the hook on; every figure as the sheet prints it, in inches. */
export interface TapeReadings {
  readonly posts: readonly PostReading[];
  /** Between neighbouring posts: differences of their readings, one fewer than the posts. */
  readonly spaces: readonly Inches[];
  /** From the hook to the first post, and from the last post to the far mark. */
  readonly lead: Inches;
  readonly tail: Inches;
  /** The whole run: lead, spaces and tail add up to it exactly. */
  readonly total: Inches;
}

/**
 * The readings of a run from the mark at which the tape is hooked. Each reading is rounded by
 * itself, so no error builds up along the tape; bays are differences of rounded readings, so every
 * chain adds up to its total, and so do the two readings of a post.
 */
export const tapeReadings = (run: Run, hook: 'start' | 'end', style: LengthStyle): TapeReadings => {
  const total = roundLength(run.length, style);
  const stations = run.posts.map(({ post, station }): PostReading => {
    const reading = roundLength(fromHook(run, station, hook), style);
    return { post, reading, back: inches(total - reading) };
  });
  const posts = hook === 'start' ? stations : stations.toReversed();
  const spaces = posts
    .slice(1)
    .map(({ reading }, n) => inches(reading - (posts[n]?.reading ?? reading)));
  const lead = posts[0]?.reading ?? inches(0);
  const tail = inches(total - (posts.at(-1)?.reading ?? total));
  return { posts, spaces, lead, tail, total };
};
