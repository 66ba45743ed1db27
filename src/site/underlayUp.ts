import { bearing } from '../geometry/bearing.ts';
import { pictureMap } from '../geometry/pictureMap.ts';
import type { Radians } from '../units/radians.ts';
import { tiesOf } from './tiesOf.ts';
import type { Underlay } from './underlay.ts';

/**
 * Which way the upper edge of a picture lies on the ground, counter-clockwise from east; of a straightened
 * one at the middle of its four points, where it lies before the horizon.
 */
export const underlayUp = (underlay: Underlay): Radians => {
  const ties = tiesOf(underlay);
  const mean = (of: 'u' | 'v'): number => ties.reduce((sum, tie) => sum + tie[of], 0) / ties.length;
  const { toSite } = pictureMap(ties);
  const middle = { x: mean('u'), y: mean('v') };
  return bearing(toSite(middle), toSite({ x: middle.x, y: middle.y - 1 }));
};
