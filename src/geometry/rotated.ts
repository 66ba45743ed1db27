import type { Radians } from '../units/radians.ts';
import type { Point } from './point.ts';

/** A point turned about a centre, from the x axis towards the y axis. */
export const rotated = <Space extends string>(
  point: Point<Space>,
  centre: Point<NoInfer<Space>>,
  angle: Radians,
): Point<Space> => {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const [x, y] = [point.x - centre.x, point.y - centre.y];
  return { x: centre.x + x * cos - y * sin, y: centre.y + x * sin + y * cos };
};
