import { inches, type Inches } from '../../units/inches.ts';
import { allowableShare } from './allowableShare.ts';
import { allowedBay } from './allowedBay.ts';
import { bendingCapacity, type Member } from './bendingCapacity.ts';
import { fenceWind, type FenceWind, type WindFence } from './fenceWind.ts';
import type { PolePush } from './poleFooting.ts';
import type { Wind } from './velocityPressure.ts';

/** A line post in the wind, and what it bears. Lengths in inches, moments in inch-pounds. */
export interface PostInWind {
  /** On the post and the fence of a bay, at strength level. */
  readonly wind: FenceWind;
  /** At the ground, as it counts where allowable stresses are used. */
  readonly bends: number;
  readonly capacity: number;
  /** The longest bay at which the post bends by no more than it may bear. */
  readonly longest: Inches;
  /** What pushes on the post, as it counts for its footing. */
  readonly push: PolePush;
}

/**
 * A line post of a pipe that holds a bay of fence, inches from post to post, in the wind. Null where the
 * fabric is more solid than the table of open frames goes.
 */
export const postInWind = (
  fence: Omit<WindFence, 'post'>,
  member: Member,
  { wind, bay }: { readonly wind: Wind; readonly bay: Inches },
): PostInWind | null => {
  const found = fenceWind({ ...fence, post: member.od }, wind, bay);
  const longest = allowedBay(fence, member, wind);
  if (found === null || longest === null) return null;
  const share = allowableShare(wind);
  const height = inches(found.pounds === 0 ? 0 : found.moment / found.pounds);
  return {
    wind: found,
    bends: share * found.moment,
    capacity: bendingCapacity(member),
    longest,
    push: { pounds: share * found.pounds, height },
  };
};
