import type { Post } from '../../../engine/post.ts';
import { phrase } from '../../../phrases/phrase.ts';
import type { FenceSpec } from '../../../site/fenceSpec.ts';
import { isWoven } from '../../../site/isWoven.ts';
import type { Site } from '../../../site/site.ts';
import { cornerAngles } from '../../../trade/cornerAngles.ts';
import { postsForHeight } from '../../../trade/fencePosts.ts';
import { gatePostFor } from '../../../trade/gatePosts.ts';
import { holdOpenPost, rollerPost } from '../../../trade/gateStands.ts';
import { pullIntervals } from '../../../trade/pullPosts.ts';
import { formatAngle } from '../../../units/formatAngle.ts';
import { formatLength } from '../../../units/formatLength.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { pipeSize } from '../../../units/pipeSize.ts';
import { leafAt, specsOf } from './holeReasons.ts';
import { ofTheBuild, practice, publishedOf, type Reason } from './reason.ts';

/** The reason why a post of a kind stands where it does, by the build of its first line. */
type KindReason = (spec: FenceSpec, style: LengthStyle) => Reason;

const said =
  (says: string, source = practice): KindReason =>
  () => ({ says, source });

const angleSource = ({ cornerAngle }: FenceSpec): string =>
  publishedOf(cornerAngles, ({ angle }) => angle === cornerAngle);

const pullReason: KindReason = ({ pullInterval }, style) =>
  pullInterval === null
    ? {
        says: phrase`Fabric is pulled from here, where the grade changes.`,
        source: practice,
      }
    : {
        says: phrase`Fabric is pulled from here: no stretch is longer than ${formatLength(pullInterval, style)}, and none goes on where the grade changes much.`,
        source: publishedOf(pullIntervals, ({ length }) => length === pullInterval),
      };

const kinds: Readonly<Record<Post['kind'], KindReason>> = {
  end: said(phrase`The fence ends here: a terminal post, from which fabric is stretched.`),
  wall: (spec, style) => ({
    says: phrase`The fence ends at a wall: a terminal post, ${formatLength(spec.wallGap, style)} off its face.`,
    source: ofTheBuild,
  }),
  corner: (spec) => ({
    says: phrase`The line turns here by more than ${formatAngle(spec.cornerAngle)}: a terminal post, from which fabric is stretched.`,
    source: angleSource(spec),
  }),
  bend: (spec) => ({
    says: phrase`The line turns here by no more than ${formatAngle(spec.cornerAngle)}: a line post will do.`,
    source: angleSource(spec),
  }),
  junction: said(phrase`Fence lines meet here: a terminal post, from which fabric is stretched.`),
  gate: said(phrase`A gate hangs from it or latches to it.`),
  line: said(phrase`It stands between two terminal posts, where the bays put it.`),
  pull: pullReason,
  roller: said(phrase`A leaf rolls on it.`, rollerPost.source.text),
  'hold-open': said(phrase`It holds a leaf that stands open.`, holdOpenPost.source.text),
  stop: said(phrase`Two leaves latch to it.`),
};

const leafReasons = (post: Post, site: Site): Reason[] => {
  const leaf = leafAt(post, site);
  const row = leaf === null ? null : gatePostFor(leaf);
  if (leaf === null || row === null || post.section === 'square') return [];
  return [
    {
      says: phrase`For a leaf of ${formatLength(leaf, site.lengths)} the table has a post ${pipeSize(row.post.od, site.lengths)} outside.`,
      source: row.source.text,
    },
  ];
};

const heightReasons = (post: Post, spec: FenceSpec, { lengths }: Site): Reason[] => {
  const row = isWoven(spec) ? postsForHeight(spec.fabricHeight) : null;
  if (row === null || post.gates.length > 0 || post.section === 'square') return [];
  const usual = post.kind === 'line' || post.kind === 'bend' ? row.line : row.terminal;
  return [
    {
      says: phrase`For fabric ${formatLength(spec.fabricHeight, lengths)} high the table has a post ${pipeSize(usual.od, lengths)} outside.`,
      source: row.source.text,
    },
  ];
};

/** Why a post stands where it does and is as thick as it is: what it is there for, what the tables have, what it is here. */
export const postReasons = (post: Post, site: Site): readonly Reason[] => {
  const [spec] = specsOf(post, site);
  if (spec === undefined) return [];
  const own = post.gates.some((id) => site.gates[id]?.post != null);
  return [
    kinds[post.kind](spec, site.lengths),
    ...leafReasons(post, site),
    ...heightReasons(post, spec, site),
    {
      says: phrase`Here it is ${post.pipe}, ${pipeSize(post.od, site.lengths)}.`,
      source: own ? phrase`as the gate has it` : ofTheBuild,
    },
  ];
};
