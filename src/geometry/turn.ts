import { cross } from './cross.ts';
import { dot } from './dot.ts';
import { principalAngle } from './principalAngle.ts';
import { subtract } from './subtract.ts';
import type { Radians } from '../units/radians.ts';
import type { Point } from './point.ts';

/**
 * How far the way from `a` over `b` to `c` turns at `b`, above -π and at most π: 0 straight on,
 * positive from the x axis towards the y axis (on the ground: to the left), π straight back.
 * 0 when `b` coincides with `a` or `c`.
 */
export const turn = <Space extends string>(
  a: Point<Space>,
  b: Point<NoInfer<Space>>,
  c: Point<NoInfer<Space>>,
): Radians => {
  const before = subtract(b, a);
  const after = subtract(c, b);
  return principalAngle(Math.atan2(cross(before, after), dot(before, after)));
};
