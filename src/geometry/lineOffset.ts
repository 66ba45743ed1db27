import { cross } from './cross.ts';
import type { Point } from './point.ts';
import { subtract } from './subtract.ts';
import { inches, type Inches } from '../units/inches.ts';

/**
 * How far a point lies square off the line through two others, in inches: above zero to the left of
 * the way from `start` to `end`. Zero where these two are one spot.
 */
export const lineOffset = <Space extends string>(
  point: Point<Space>,
  start: Point<NoInfer<Space>>,
  end: Point<NoInfer<Space>>,
): Inches => {
  const way = subtract(end, start);
  const length = Math.hypot(way.x, way.y);
  return inches(length === 0 ? 0 : cross(way, subtract(point, start)) / length);
};
