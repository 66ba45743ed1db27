import type { FenceSpec } from '../site/fenceSpec.ts';
import type { SpecId } from '../site/ids.ts';
import type { Pipe } from '../site/pipe.ts';
import { roundPost } from '../site/roundPost.ts';
import { defaultCornerAngle } from '../trade/cornerAngles.ts';
import { postSizes, postsForHeight } from '../trade/fencePosts.ts';
import { defaultGapUnder } from '../trade/gapUnder.ts';
import { gatePostSizes } from '../trade/gatePosts.ts';
import type { FencePipe } from '../trade/pipes.ts';
import { defaultPostTops } from '../trade/postTops.ts';
import { defaultPullGrade, defaultPullInterval } from '../trade/pullPosts.ts';
import { maxSpacing } from '../trade/spacing.ts';
import { inches, type Inches } from '../units/inches.ts';
import { phrase } from '../phrases/phrase.ts';

/** A post against a wall stands off it by this much; common practice, no published source. */
const wallGap = inches(2);

const pipe = ({ label, od, wall }: FencePipe): Pipe => ({ label, od, wall });

/** A build under the id by which a site will carry it. */
export interface UsualSpec {
  readonly id: SpecId;
  readonly spec: FenceSpec;
}

/**
 * A fence of a height (inches, up to 12 ft) as the tables have it: a start, every value to be changed.
 * A higher one has the posts of the highest row.
 */
export const usualSpec = (height: Inches): UsualSpec => {
  const sizes = postsForHeight(height) ?? postSizes.at(-1);
  const [gate] = gatePostSizes;
  if (sizes === undefined || gate === undefined) throw new RangeError('expected post sizes');
  const thicker = sizes.terminal.od > gate.post.od ? sizes.terminal : gate.post;
  const spec: FenceSpec = {
    label: phrase`${height / 12} ft chain link`,
    remark: phrase`Posts: ${sizes.source.text}. Gate posts: ${gate.source.text}.`,
    infill: { kind: 'chain link' },
    fabricHeight: height,
    maxBay: maxSpacing.length,
    cornerAngle: defaultCornerAngle.angle,
    linePost: roundPost(sizes.line),
    terminalPost: roundPost(sizes.terminal),
    gatePost: roundPost(thicker),
    topRail: pipe(sizes.topRail),
    middleRail: null,
    bottomRail: null,
    barbedWire: null,
    grade: null,
    mesh: null,
    wire: null,
    selvage: null,
    solid: null,
    leastDepth: inches(0),
    terminalAbove: defaultPostTops.terminal,
    lineAbove: defaultPostTops.line,
    pullInterval: defaultPullInterval.length,
    pullGrade: defaultPullGrade.ratio,
    gapUnder: defaultGapUnder.length,
    wallGap,
    foundationToe: null,
    onCurves: 'by radius',
  };
  return { id: `spec:chain-link-${height / 12}-ft`, spec };
};
