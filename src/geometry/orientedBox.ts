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
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const left = centre.x - halfWidth - centre.x;
  const right = centre.x + halfWidth - centre.x;
  const low = centre.y - halfHeight - centre.y;
  const high = centre.y + halfHeight - centre.y;
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
  const left = x - halfWidth - x;
  const right = x + halfWidth - x;
  const low = y - halfHeight - y;
  const high = y + halfHeight - y;
  // most letters stand upright
  if (angle === 0) return { minX: x + left, minY: y + low, maxX: x + right, maxY: y + high };
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const fromX = x + left * cos;
  const toX = x + right * cos;
  const fromY = y + left * sin;
  const toY = y + right * sin;
  return {
    minX: Math.min(fromX, toX) - Math.max(low * sin, high * sin),
    minY: Math.min(fromY, toY) + Math.min(low * cos, high * cos),
    maxX: Math.max(fromX, toX) - Math.min(low * sin, high * sin),
    maxY: Math.max(fromY, toY) + Math.max(low * cos, high * cos),
  };
};
