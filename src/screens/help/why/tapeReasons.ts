import type { Layout, Run } from '../../../engine/layout.ts';
import { tapeReadings } from '../../../engine/posts/tapeReadings.ts';
import { phrase } from '../../../phrases/phrase.ts';
import type { Site } from '../../../site/site.ts';
import { lengthOfSteps } from '../../../units/lengthOfSteps.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { practice, workedOut, type Reason } from './reason.ts';

/** Why a tape reads what it does along a run: where it is hooked, how its readings are rounded, and what they are of. */
export const tapeReasons = (run: Run, site: Site, layout: Layout): readonly Reason[] => {
  const hook = site.lines[run.line]?.hook ?? 'start';
  const { posts, total } = tapeReadings(run, hook, site.lengths);
  const first = layout.posts.get(posts[0]?.post ?? 'post:')?.tag ?? '?';
  return [
    {
      says: phrase`The tape is hooked at the mark of post ${first} and read at the centre of each post, over ${formatLength(total, site.lengths)} in all.`,
      source: practice,
    },
    {
      says: phrase`Each reading is rounded by itself to ${formatLength(lengthOfSteps(1, site.lengths), site.lengths)}, so that no error builds up along the tape.`,
      source: practice,
    },
    ...(run.ground === null
      ? []
      : [{ says: phrase`It lies along the grade and not level.`, source: workedOut }]),
  ];
};
