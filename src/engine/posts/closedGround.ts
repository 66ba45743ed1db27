import { closedOn } from '../keepOut/closedOn.ts';
import type { KeepOut } from '../keepOut/keepOut.ts';
import { holeFor } from './holeFor.ts';
import type { SeatedCourse } from './seatLines.ts';
import type { Closed } from './spaceOut.ts';

/**
 * Where on a course no line post may stand, its whole hole reckoned with: in keep-outs, and where
 * ground is kept clear by hand; inches from its start.
 */
export const closedGround = (
  { course, spec }: Pick<SeatedCourse, 'course' | 'spec'>,
  keepOuts: readonly KeepOut[],
  clear: readonly Closed[],
): readonly Closed[] => {
  if (keepOuts.length === 0 && clear.length === 0) return [];
  const { linePost, fabricHeight } = spec;
  const hole = holeFor({ od: linePost.od, fabricHeight, leaf: null }).diameter;
  const byHand = clear.map(({ from, to }) => ({ from: from - hole / 2, to: to + hole / 2 }));
  const drawn = course.legs.flatMap((leg, n) => {
    const start = course.starts[n] ?? 0;
    return keepOuts
      .flatMap((keepOut) => closedOn(keepOut, leg, hole / 2))
      .map(({ from, to }) => ({ from: start + from, to: start + to }));
  });
  return [...drawn, ...byHand];
};
