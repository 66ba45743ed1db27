import { shiftText } from '../../../drawing/tables/tieTables.ts';
import type { Layout } from '../../../engine/layout.ts';
import type { PostId } from '../../../engine/post.ts';
import { postTies } from '../../../engine/ties/postTies.ts';
import { slipOf, tapeOf } from '../../../engine/ties/twoTapes.ts';
import { phrase } from '../../../phrases/phrase.ts';
import type { Site } from '../../../site/site.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { practice, workedOut, type Reason } from './reason.ts';

/** By which tapes from marks on site a terminal post is found again, and how well those hold it. None for other posts. */
export const tieReasons = (id: PostId, site: Site, layout: Layout): readonly Reason[] => {
  const tie = postTies(site, layout).find(({ post }) => post === id);
  const { lengths } = site;
  if (tie === undefined) return [];
  const { tapes, lacks } = tie;
  const sketch = tie.sketched
    ? [{ says: phrase`It stands where it was sketched: no reading holds it.`, source: workedOut }]
    : [];
  if (tapes === null)
    return lacks === null
      ? sketch
      : [...sketch, { says: phrase`It has no tie: ${lacks}.`, source: workedOut }];
  const { first, second, side, shift } = tapes;
  const [one, two] = [formatLength(first.reads, lengths), formatLength(second.reads, lengths)];
  const slip = shiftText(slipOf(lengths), lengths);
  return [
    ...sketch,
    {
      says:
        side === 'left'
          ? phrase`Two tapes find it again: ${one} from ${first.from.name} and ${two} from ${second.from.name}; seen from the first to the second it is on the left.`
          : phrase`Two tapes find it again: ${one} from ${first.from.name} and ${two} from ${second.from.name}; seen from the first to the second it is on the right.`,
      source: workedOut,
    },
    {
      says: phrase`Of all marks in sight these two cross best within a tape of ${formatLength(tapeOf(lengths), lengths)}: a slip of ${slip} in one of them moves the post by ${shiftText(shift, lengths)}.`,
      source: practice,
    },
  ];
};
