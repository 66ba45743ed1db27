import { lerp } from './lerp.ts';
import type { Point } from './point.ts';

/** The point halfway between two others. */
export const midpoint = <Space extends string>(
  a: Point<Space>,
  b: Point<NoInfer<Space>>,
): Point<Space> => lerp(a, b, 0.5);
