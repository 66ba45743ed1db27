import { cross } from './cross.ts';
import { dot } from './dot.ts';
import type { Point } from './point.ts';
import { subtract } from './subtract.ts';

/**
 * How far the middle of an arc of a radius lies off its chord, the smaller of the two arcs:
 * M = R − √(R² − C²/4). All in one unit. Null where the radius is less than half the chord.
 */
export const middleOrdinate = (radius: number, chord: number): number | null => {
  const half = chord / 2;
  // a rounding below half the chord is half a circle
  if (radius < half * (1 - 1e-12)) return null;
  const rest = Math.sqrt(Math.max(0, radius * radius - half * half));
  return (half * half) / (radius + rest);
};

/**
 * The same for the arc from one point to another through a third, signed as `bowed` takes it. Null
 * where the three lie on one line, or two of them on one place.
 */
export const ordinateThrough = <Space extends string>(
  start: Point<Space>,
  via: Point<NoInfer<Space>>,
  end: Point<NoInfer<Space>>,
): number | null => {
  const [to, from, whole] = [subtract(start, via), subtract(end, via), subtract(end, start)];
  const chord = Math.hypot(whole.x, whole.y);
  const left = cross(whole, subtract(via, start));
  if (chord === 0 || left === 0) return null;
  // the angle at the third point is that of every point of the arc: half the angle of the rest
  const seen = Math.atan2(Math.abs(cross(to, from)), dot(to, from));
  return (Math.sign(left) * (chord / 2)) / Math.tan(seen / 2);
};
