import { closedOn } from '../keepOut/closedOn.ts';
import type { KeepOut } from '../keepOut/keepOut.ts';
import type { WallTop } from '../../site/wallTop.ts';
import type { Inches } from '../../units/inches.ts';
import { digs } from '../wall/digs.ts';
import { wallReach } from '../wall/wallHole.ts';
import { wallSteps } from '../wall/wallSteps.ts';
import { holeFor } from './holeFor.ts';
import type { SeatedCourse } from './seatLines.ts';
import type { Closed } from './spaceOut.ts';

/** Where a post would stand nearer to a step of its wall than it may. */
const offSteps = (wall: WallTop, length: number, od: Inches): Closed[] => {
  const reach = wallReach(wall, od);
  return wallSteps(wall, length).map((at) => ({ from: at - reach, to: at + reach }));
};

/**
 * Where on a course no line post may stand, its whole hole reckoned with: in keep-outs, by the
 * steps of a wall, and where ground is kept clear by hand; inches from its start.
 */
export const closedGround = (
  { course, spec }: Pick<SeatedCourse, 'course' | 'spec'>,
  keepOuts: readonly KeepOut[],
  clear: readonly Closed[],
): readonly Closed[] => {
  const { linePost, fabricHeight } = spec;
  const { wall } = course;
  const steps = wall === null ? [] : offSteps(wall, course.length, linePost.od);
  if (keepOuts.length === 0 && clear.length === 0) return steps;
  const hole = holeFor({ post: linePost, fabricHeight, leaf: null, wall }).diameter;
  const byHand = clear.map(({ from, to }) => ({ from: from - hole / 2, to: to + hole / 2 }));
  if (!digs(wall)) return [...steps, ...byHand];
  const drawn = course.legs.flatMap((leg, n) => {
    const start = course.starts[n] ?? 0;
    return keepOuts
      .flatMap((keepOut) => closedOn(keepOut, leg, hole / 2))
      .map(({ from, to }) => ({ from: start + from, to: start + to }));
  });
  return [...steps, ...drawn, ...byHand];
};
