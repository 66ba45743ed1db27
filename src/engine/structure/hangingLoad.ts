import type { Inches } from '../../units/inches.ts';

/** A leaf as its post bears it. Lengths in inches. */
export interface Hanging {
  readonly pounds: number;
  readonly width: Inches;
  /** From the face of the post to the frame. */
  readonly hingeAllowance: Inches;
  readonly postOd: Inches;
  /** Heights of the hinges over the ground. */
  readonly lowHinge: Inches;
  readonly highHinge: Inches;
}

/** What hangs on a post: the pull of the upper hinge and push of the lower one, pounds; moment, inch-pounds. */
export interface HangingLoad {
  readonly pull: number;
  readonly moment: number;
}

/**
 * The load of a leaf that hangs still: its weight acts at the middle of its width, about the axis of the
 * post. Throws a RangeError where the hinges are not one over the other.
 */
export const hangingLoad = (leaf: Hanging): HangingLoad => {
  const apart = leaf.highHinge - leaf.lowHinge;
  if (!(apart > 0)) {
    throw new RangeError(`hinges ${apart} in apart: expected the high one over the low one`);
  }
  const moment = leaf.pounds * (leaf.postOd / 2 + leaf.hingeAllowance + leaf.width / 2);
  return { pull: moment / apart, moment };
};
