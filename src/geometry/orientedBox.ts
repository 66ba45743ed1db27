import type { Radians } from '../units/radians.ts';
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
