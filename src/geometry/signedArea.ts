import { cross } from './cross.ts';
import { edges } from './polygon.ts';
import { subtract } from './subtract.ts';
import type { Polygon } from './polygon.ts';

/**
 * The area of a polygon in square units of the space, positive when it runs from the x axis
 * towards the y axis (on the ground: counter-clockwise). 0 for fewer than three points.
 */
export const signedArea = <Space extends string>(polygon: Polygon<Space>): number => {
  const [anchor] = polygon;
  if (anchor === undefined) return 0;
  // from a point of its own, else a small area far from the origin drowns in rounding
  const parts = edges(polygon).map(
    ({ start, end }) => cross(subtract(start, anchor), subtract(end, anchor)) / 2,
  );
  return parts.reduce((total, part) => total + part, 0);
};
