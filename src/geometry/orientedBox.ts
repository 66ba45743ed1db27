import type { Radians } from '../units/radians.ts';
import type { Bounds } from './bounds.ts';
import type { Point } from './point.ts';

/** A rectangle turned about its centre, from the x axis towards the y axis. */
export interface OrientedBox<Space extends string> {
  readonly centre: Point<Space>;
  readonly halfWidth: number;
  readonly halfHeight: number;
  readonly angle: Radians;
}

/** The four corners of a box, one after the other round it. */
export const corners = <Space extends string>(box: OrientedBox<Space>): Point<Space>[] => {
  const { centre, halfWidth, halfHeight, angle } = box;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const [left, right] = [centre.x - halfWidth - centre.x, centre.x + halfWidth - centre.x];
  const [low, high] = [centre.y - halfHeight - centre.y, centre.y + halfHeight - centre.y];
  const corner = (x: number, y: number): Point<Space> => ({
    x: centre.x + x * cos - y * sin,
    y: centre.y + x * sin + y * cos,
  });
  return [corner(left, low), corner(right, low), corner(right, high), corner(left, high)];
};

/** The smallest bounds that hold a box. */
export const boundsOfBox = (box: OrientedBox<string>): Bounds => {
  const { centre, halfWidth, halfHeight, angle } = box;
  const { x, y } = centre;
  const [left, right] = [x - halfWidth - x, x + halfWidth - x];
  const [low, high] = [y - halfHeight - y, y + halfHeight - y];
  // most letters stand upright
  if (angle === 0) return { minX: x + left, minY: y + low, maxX: x + right, maxY: y + high };
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const [a, b] = [x + left * cos, x + right * cos];
  const [c, d] = [y + left * sin, y + right * sin];
  return {
    minX: Math.min(a, b) - Math.max(low * sin, high * sin),
    minY: Math.min(c, d) + Math.min(low * cos, high * cos),
    maxX: Math.max(a, b) - Math.min(low * sin, high * sin),
    maxY: Math.max(c, d) + Math.max(low * cos, high * cos),
  };
};
