import { radians } from '../units/radians.ts';
import type { Arc } from './arcToBeziers.ts';
import { distance } from './distance.ts';
import type { Point } from './point.ts';

/**
 * The arc from one point to another whose middle lies `ordinate` off the middle of its chord, in the
 * unit of the space: above zero to the left of the way from `start` to `end`, with x to the east and
 * y to the north. More than half the chord makes more than half a circle. R = (C²/4 + M²) / 2M, the
 * middle ordinate of route surveying. RangeError for an ordinate of 0 and for two points on one place.
 */
export const bowed = <Space extends string>(
  start: Point<Space>,
  end: Point<NoInfer<Space>>,
  ordinate: number,
): Arc<Space> => {
  const chord = distance(start, end);
  if (ordinate === 0 || chord === 0) {
    throw new RangeError(
      `arc: expected a chord and an ordinate over 0, found ${chord}, ${ordinate}`,
    );
  }
  const radius = (chord * chord) / (8 * Math.abs(ordinate)) + Math.abs(ordinate) / 2;
  const inside = ordinate - Math.sign(ordinate) * radius;
  const left = { x: (start.y - end.y) / chord, y: (end.x - start.x) / chord };
  const centre = {
    x: (start.x + end.x) / 2 + inside * left.x,
    y: (start.y + end.y) / 2 + inside * left.y,
  } as Point<Space>;
  return {
    centre,
    radius,
    start: radians(Math.atan2(start.y - centre.y, start.x - centre.x)),
    sweep: radians(-4 * Math.atan((2 * ordinate) / chord)),
  };
};
