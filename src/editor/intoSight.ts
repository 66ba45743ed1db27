import type { Bounds } from '../geometry/bounds.ts';
import type { ScreenPoint } from '../geometry/point.ts';

/** How far a point is to stand clear of the edges, in CSS pixels. */
const clear = 40;

const shift = (at: number, low: number, high: number): number => {
  // a point that is not to be seen at all comes to the middle, so that there is room to go on
  if (at < low || at > high || high - low < 2 * clear) return (low + high) / 2 - at;
  return Math.min(high - clear, Math.max(low + clear, at)) - at;
};

/**
 * By how much the pad is to be moved (CSS pixels) so that a point of the screen stands clear in the
 * part that nothing lies over; zero each way where it does.
 */
export const intoSight = (at: ScreenPoint, seen: Bounds): ScreenPoint => ({
  x: at.x > seen.minX + clear && at.x < seen.maxX - clear ? 0 : shift(at.x, seen.minX, seen.maxX),
  y: at.y > seen.minY + clear && at.y < seen.maxY - clear ? 0 : shift(at.y, seen.minY, seen.maxY),
});
