import { inches } from '../../units/inches.ts';
import { radians } from '../../units/radians.ts';
import {
  postsFor,
  type FabricOnGrade,
  type GradedBay,
  type GradedFence,
  type GradePost,
} from './gradedFence.ts';

/**
 * Level panels that step by the same amount from bay to bay: the rise from the first post to the
 * last ÷ the number of bays (trade practice). They lie as low as they can so that none is nearer
 * than `clear` to the ground at a post; between posts the ground may be higher. Stations rise;
 * fewer than two posts have no bay.
 */
export const stepsFor = (posts: readonly GradePost[], fabric: FabricOnGrade): GradedFence => {
  const spans = posts.slice(1).map((to, n) => ({ from: posts[n] ?? to, to }));
  const rise = (posts.at(-1)?.ground ?? 0) - (posts.at(0)?.ground ?? 0);
  const step = spans.length === 0 ? 0 : rise / spans.length;
  const highest = spans.map(({ from, to }, n) => Math.max(from.ground, to.ground) - n * step);
  const base = Math.max(...highest) + fabric.clear;
  const bays = spans.map(({ from, to }, n): GradedBay => {
    const z = inches(base + n * step);
    return {
      from: { at: from.at, z },
      to: { at: to.at, z },
      rake: radians(0),
      slope: inches(to.at - from.at),
      endCut: inches(0),
      plumb: fabric.fabric,
    };
  });
  return { way: 'step', bays, posts: postsFor(posts, bays, fabric.above), step: inches(step) };
};
