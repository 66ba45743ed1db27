import type { Point } from './point.ts';

/**
 * A vector turned a quarter turn from the x axis towards the y axis: on the ground to the left of
 * the way it points, on paper and screen (y down) to the right. Same length, exact.
 */
export const perpendicular = <Space extends string>(vector: Point<Space>): Point<Space> => ({
  x: -vector.y,
  y: vector.x,
});
