import { steelModulus } from '../../trade/steel.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { hangingLoad, type Hanging } from './hangingLoad.ts';
import { pipeSection } from './pipeSection.ts';

/**
 * How far a post that is held fast at the ground leans at a height, inches, for a push of a pound at another;
 * by the bending of a cantilever (statics, any handbook).
 */
const leanAt = (height: number, push: number, stiffness: number): number => {
  const [low, high] = [Math.min(height, push), Math.max(height, push)];
  return (low ** 2 * (3 * high - low)) / (6 * stiffness);
};

/**
 * How far the latch side of a leaf comes down, inches, as its post bends under it: the lean between the
 * two hinges over the width of the leaf. The frame is taken for stiff and the footing for fast: what both
 * give comes on top. A lean that is no longer small counts as the whole width: no leaf comes down by more.
 */
export const latchSag = (leaf: Hanging, postWall: Inches): Inches => {
  const { pull } = hangingLoad(leaf);
  const stiffness = steelModulus * pipeSection({ od: leaf.postOd, wall: postWall }).inertia;
  const lean = (at: number): number =>
    pull * (leanAt(at, leaf.highHinge, stiffness) - leanAt(at, leaf.lowHinge, stiffness));
  const turn = (lean(leaf.highHinge) - lean(leaf.lowHinge)) / (leaf.highHinge - leaf.lowHinge);
  return inches((turn < 1 ? turn : 1) * (leaf.hingeAllowance + leaf.width));
};
