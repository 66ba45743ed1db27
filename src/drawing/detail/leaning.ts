import { slack } from '../../geometry/tolerance.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { segmentsOutline } from '../explode/polylineOutline.ts';
import type { Outline } from '../outline.ts';

/** An upright rectangle by two corners, paper inches. */
export interface Room {
  readonly from: PaperPoint;
  readonly to: PaperPoint;
}

/**
 * Lines at 45 degrees through an upright rectangle, so far apart across the page (paper inches), leaning to the
 * right (1) or left (-1); each ends at its edges.
 */
export const leaning = ({ from, to }: Room, apart: number, lean: 1 | -1): Outline => {
  const [left, right] = [Math.min(from.x, to.x), Math.max(from.x, to.x)];
  const [top, foot] = [Math.min(from.y, to.y), Math.max(from.y, to.y)];
  const [wide, high] = [right - left, foot - top];
  const count = Math.floor((wide + high) / apart + slack);
  const lines = Array.from({ length: count }, (_, n) => {
    // from the foot upwards, first along the foot and then along the side
    const start = (n + 0.5) * apart - high;
    const [low, end] = [Math.max(0, start), Math.min(wide, start + high)];
    const x = (along: number): number => (lean > 0 ? left + along : right - along);
    return [
      { x: x(low), y: foot - (low - start) },
      { x: x(end), y: foot - (end - start) },
    ] as const;
  });
  return segmentsOutline(lines);
};
