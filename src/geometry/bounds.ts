import type { Point } from './point.ts';

/** An upright rectangle, in the unit and axes of its space; the edges belong to it. */
export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** The smallest bounds that hold both. */
export const unionOfBounds = (a: Bounds, b: Bounds): Bounds => ({
  minX: Math.min(a.minX, b.minX),
  minY: Math.min(a.minY, b.minY),
  maxX: Math.max(a.maxX, b.maxX),
  maxY: Math.max(a.maxY, b.maxY),
});

/** The smallest bounds that hold every point; null for none. */
export const boundsOf = (points: readonly Point<string>[]): Bounds | null => {
  if (points.length === 0) return null;
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  }
  return { minX, minY, maxX, maxY };
};

/**
 * Bounds grown by a margin on every side. A negative margin shrinks them, at most to the middle:
 * they never turn inside out.
 */
export const expandBounds = ({ minX, minY, maxX, maxY }: Bounds, margin: number): Bounds => {
  const across = Math.max(margin, (minX - maxX) / 2);
  const up = Math.max(margin, (minY - maxY) / 2);
  return { minX: minX - across, minY: minY - up, maxX: maxX + across, maxY: maxY + up };
};

/** Whether two bounds share a point; touching edges do. */
export const boundsOverlap = (a: Bounds, b: Bounds): boolean =>
  a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY;
