import { rotated } from './rotated.ts';
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
  const signs = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ] as const;
  return signs.map(([across, up]) =>
    rotated({ x: centre.x + across * halfWidth, y: centre.y + up * halfHeight }, centre, angle),
  );
};
