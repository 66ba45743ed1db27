import { inches } from '../../units/inches.ts';
import { radians } from '../../units/radians.ts';
import {
  postsFor,
  type FabricOnGrade,
  type GradedBay,
  type GradedFence,
  type GradePost,
} from './gradedFence.ts';

const bayOf = (from: GradePost, to: GradePost, { fabric, clear }: FabricOnGrade): GradedBay => {
  const [run, rise] = [to.at - from.at, to.ground - from.ground];
  const rake = Math.atan2(rise, run);
  return {
    from: { at: from.at, z: inches(from.ground + clear) },
    to: { at: to.at, z: inches(to.ground + clear) },
    rake: radians(rake),
    slope: inches(Math.hypot(run, rise)),
    endCut: inches(fabric * Math.abs(Math.tan(rake))),
    plumb: inches(fabric / Math.cos(rake)),
  };
};

/**
 * Fabric that follows the grade from post to post with plumb posts: laid along each bay's slope
 * and cut plumb at its ends, so that it stands its width ÷ cos(rake) high. Stations rise; fewer
 * than two posts have no bay.
 */
export const followGrade = (posts: readonly GradePost[], fabric: FabricOnGrade): GradedFence => {
  const bays = posts.slice(1).map((to, n) => bayOf(posts[n] ?? to, to, fabric));
  return { way: 'follow', bays, posts: postsFor(posts, bays, fabric.above), step: inches(0) };
};
