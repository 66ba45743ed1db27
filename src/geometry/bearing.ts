import { principalAngle } from './principalAngle.ts';
import type { Radians } from '../units/radians.ts';
import type { Point } from './point.ts';

/**
 * The direction from one point to another, above -π and at most π, from the x axis towards the y
 * axis (on the ground: counter-clockwise from east). 0 when the points coincide.
 */
export const bearing = <Space extends string>(
  from: Point<Space>,
  to: Point<NoInfer<Space>>,
): Radians => principalAngle(Math.atan2(to.y - from.y, to.x - from.x));
