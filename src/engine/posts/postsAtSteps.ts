import { wallReach } from '../wall/wallHole.ts';
import { wallSteps } from '../wall/wallSteps.ts';
import type { HeldPost } from './runPosts.ts';
import type { SeatedCourse } from './seatLines.ts';

/**
 * A line post at the foot of every step of a wall, as near to it as it may stand, so that no more of
 * the fabric than that hangs over the lower part. None where the level parts are shorter than half
 * the largest bay: the gap under the fabric is told instead. Stations in inches from the start.
 */
export const postsAtSteps = ({ course, spec }: SeatedCourse): readonly HeldPost[] => {
  const { wall, chain, from, length } = course;
  if (wall === null || !Number.isFinite(spec.maxBay)) return [];
  if (length / (wall.steps + 1) < spec.maxBay / 2) return [];
  const reach = wallReach(wall, spec.linePost.od);
  return wallSteps(wall, length).map((at, n) => ({
    id: `post:${chain.id}:${from.vertex}:step-${n + 1}` as const,
    station: at - Math.sign(wall.rise) * reach,
    kind: 'line',
  }));
};
