import type { Layout } from '../../engine/layout.ts';
import type { PostTie } from '../../engine/ties/postTies.ts';
import { slipOf, tapeOf } from '../../engine/ties/twoTapes.ts';
import type { Site } from '../../site/site.ts';
import { formatLength } from '../../units/formatLength.ts';
import { lengthOfSteps } from '../../units/lengthOfSteps.ts';
import { inches } from '../../units/inches.ts';
import { shiftText } from './tieTables.ts';
import { phrase } from '../../phrases/phrase.ts';

const how = (slip: string): string =>
  phrase`All distances are level and go to the middle of the post. Where the two tapes cross, on the side told, is the post; left and right are those of one who stands at the first mark and looks to the second. Along a wall the same: from its first corner to its other. Shift is how far the post moves when one of the two tapes is ${slip} off.`;

const sketched = phrase`The plan is as it was sketched: these distances are taken from it, and no tape has checked them. Where a third tape does not fit, the plan is wrong there.`;

const tagsOf = (ties: readonly PostTie[], { posts }: Layout): string => {
  const tags = ties.flatMap(({ post }) => posts.get(post)?.tag ?? []);
  const all = tags.join(', ');
  return tags.length === 1 ? phrase`post ${all}` : phrase`posts ${all}`;
};

const tapesIn = ({ tapes }: PostTie) => (tapes === null ? [] : [tapes.first, tapes.second]);

/** Posts of which some tape reads more along the slope than the tape is read to. */
const slopeText = (ties: readonly PostTie[], layout: Layout, { lengths }: Site): string[] => {
  const least = lengthOfSteps(1, { ...lengths, fraction: 16 });
  const steep = ties.filter(({ onSlope }) => (onSlope ?? 0) >= least);
  const most = inches(Math.max(0, ...steep.map(({ onSlope }) => onSlope ?? 0)));
  if (steep.length === 0) return [];
  return [
    phrase`The ground falls: hold the tapes level and plumb down. Along the ground they read up to ${shiftText(most, lengths)} more, at ${tagsOf(steep, layout)}.`,
  ];
};

/**
 * What there is to say of ties before their tables: how they are read, what is beyond the tape,
 * where the ground falls, what no reading holds, and which posts nothing holds.
 */
export const tieTexts = (ties: readonly PostTie[], layout: Layout, site: Site): string[] => {
  const over = ties.filter((tie) => tapesIn(tie).some((tape) => tape.over));
  const loose = ties.filter((tie) => tie.sketched);
  const unheld = ties.filter((tie) => tapesIn(tie).some(({ from }) => from.sketched));
  const tape = formatLength(tapeOf(site.lengths), site.lengths);
  return [
    how(shiftText(slipOf(site.lengths), site.lengths)),
    ...(layout.survey.stands === 'sketched' ? [sketched] : []),
    ...(over.length === 0 ? [] : [phrase`Longer than a tape of ${tape}: ${tagsOf(over, layout)}.`]),
    ...slopeText(ties, layout, site),
    ...(unheld.length === 0
      ? []
      : [phrase`From marks that were sketched and not measured: ${tagsOf(unheld, layout)}.`]),
    ...(loose.length === 0
      ? []
      : [
          phrase`Posts that stand where they were sketched, held by no reading: ${tagsOf(loose, layout)}.`,
        ]),
    ...ties.flatMap(({ post, lacks }) =>
      lacks === null
        ? []
        : [phrase`Post ${layout.posts.get(post)?.tag ?? '?'} has no tie: ${lacks}.`],
    ),
  ];
};
