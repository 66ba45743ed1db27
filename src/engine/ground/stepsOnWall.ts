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
  const z = inches(Math.max(from.ground, to.ground) + clear);
  return {
    from: { at: from.at, z },
    to: { at: to.at, z },
    rake: radians(0),
    slope: inches(to.at - from.at),
    endCut: inches(0),
    plumb: fabric,
  };
};

/**
 * Level panels over a wall that steps: each lies on the higher of what its two posts stand on.
 * Stations rise; fewer than two posts have no bay. `step` is 0: the wall says where it steps.
 */
export const stepsOnWall = (posts: readonly GradePost[], fabric: FabricOnGrade): GradedFence => {
  const bays = posts.slice(1).map((to, n) => bayOf(posts[n] ?? to, to, fabric));
  return { way: 'wall', bays, posts: postsFor(posts, bays, fabric.above), step: inches(0) };
};
