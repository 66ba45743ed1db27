import type { Point } from './point.ts';

/** A vector times a plain number; a negative factor turns it about. */
export const scale = <Space extends string>(
  vector: Point<Space>,
  factor: number,
): Point<Space> => ({ x: vector.x * factor, y: vector.y * factor });
