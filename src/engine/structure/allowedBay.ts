import { inches, type Inches } from '../../units/inches.ts';
import { allowableShare } from './allowableShare.ts';
import { bendingCapacity, type Member } from './bendingCapacity.ts';
import { fenceWind, type WindFence } from './fenceWind.ts';
import type { Wind } from './velocityPressure.ts';

/**
 * The longest bay, inches, at which the bending of a line post by the wind is what the pipe may bear;
 * 0 where the wind on the post alone is more. Null where the fabric is too solid for the table.
 */
export const allowedBay = (
  fence: Omit<WindFence, 'post'>,
  member: Member,
  wind: Wind,
): Inches | null => {
  const met: WindFence = { ...fence, post: member.od };
  // the moment is a straight line over the length of the bay
  const [none, foot] = [fenceWind(met, wind, inches(0)), fenceWind(met, wind, inches(12))];
  if (none === null || foot === null) return null;
  const each = (foot.moment - none.moment) / 12;
  const left = bendingCapacity(member) / allowableShare(wind) - none.moment;
  if (left <= 0) return inches(0);
  return inches(left / each);
};
