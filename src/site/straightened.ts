import { arcPoints } from '../geometry/arcPoints.ts';
import { bowed } from '../geometry/bowed.ts';
import { distance } from '../geometry/distance.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { Inches } from '../units/inches.ts';
import type { FoundPath } from './found.ts';

/**
 * A path with straight pieces in place of its arcs, which lie no farther than `off` inside them. The
 * same path where it has no arc.
 */
export const straightened = (path: FoundPath, off: Inches): FoundPath => {
  if (path.bows.every((bow) => bow === 0)) return path;
  const legs = path.closed ? path.points.length : path.points.length - 1;
  const points = path.points.flatMap((point, n): SitePoint[] => {
    const [bow = 0, next] = [path.bows[n], path.points[(n + 1) % path.points.length]];
    if (next === undefined || n >= legs || distance(point, next) === 0) return [point];
    // what bows out no farther is straight as it is, and its radius may be past all numbers
    if (Math.abs(bow) <= off) return [point];
    return arcPoints(bowed(point, next, bow), off).slice(0, -1);
  });
  return { ...path, points, bows: points.map(() => 0) };
};
