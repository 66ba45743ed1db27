import type { Radians } from '../units/radians.ts';
import type { Point } from './point.ts';

/**
 * The point that lies `distance` (unit of the space) from another in a direction, counted from
 * the x axis towards the y axis. A negative distance goes the other way.
 */
export const moved = <Space extends string>(
  point: Point<Space>,
  angle: Radians,
  distance: number,
): Point<Space> => ({
  x: point.x + distance * Math.cos(angle),
  y: point.y + distance * Math.sin(angle),
});
