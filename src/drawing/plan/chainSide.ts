import type { LineLayout } from '../../engine/layout.ts';
import { centroid } from '../../geometry/centroid.ts';
import { cross } from '../../geometry/cross.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { signedArea } from '../../geometry/signedArea.ts';
import { subtract } from '../../geometry/subtract.ts';
import { trackPoints } from '../../geometry/track.ts';

/** A line that bends by less than this share of its length squared is taken for straight. */
const straight = 0.01;

/** How far straight pieces may lie inside a curve that they are taken for, inches. */
const curveOff = 12;

/**
 * The side of a fence line on which its dimensions stand, looking along it: 1 left, -1 right. Out
 * from the ground that the line goes round, or for a straight line away from `middle`.
 */
export const chainSide = (line: LineLayout, middle: SitePoint | null): 1 | -1 => {
  const [first] = line.legs;
  if (first === undefined) return 1;
  const points = [first.start, ...line.legs.flatMap((leg) => trackPoints(leg, curveOff).slice(1))];
  const area = signedArea(points);
  if (Math.abs(area) > straight * line.length ** 2) return area > 0 ? -1 : 1;
  const own = centroid(points) ?? first.start;
  const across = subtract(points.at(-1) ?? own, first.start);
  return middle !== null && cross(across, subtract(middle, own)) > 0 ? -1 : 1;
};
