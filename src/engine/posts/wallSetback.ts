import { bearing } from '../../geometry/bearing.ts';
import { nearestOnSegment } from '../../geometry/nearestOnSegment.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { edges } from '../../geometry/polygon.ts';
import type { Segment } from '../../geometry/segment.ts';
import { spot } from '../../geometry/tolerance.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';

/**
 * A fence that meets a wall at a smaller angle than this (its sine; 10°) runs along it rather than
 * into it, and ends in a plain end post (common practice, no published source).
 */
const alongWall = Math.sin(Math.PI / 18);

/** Every wall of every building of a site. */
export const wallsOf = (site: Site): Segment<'site'>[] =>
  Object.values(site.features).flatMap((feature) => {
    if (feature.kind !== 'building') return [];
    const corners = verticesOf(feature.path).flatMap(({ mark }) => site.marks[mark] ?? []);
    return corners.length < 2 ? [] : edges(corners.map(({ x, y }): SitePoint => ({ x, y })));
  });

/**
 * How far along a fence, in inches, the centre of its last post stands from the wall at which the
 * fence ends: `square`, the distance wanted square to the wall, over the sine of the angle between
 * fence and wall. Null when `at` is on no wall, or the fence runs along it.
 */
export const wallSetback = (
  walls: readonly Segment<'site'>[],
  at: SitePoint,
  direction: number,
  square: number,
): number | null => {
  const setbacks = walls
    .filter((wall) => nearestOnSegment(at, wall).distance < spot)
    .map((wall) => Math.abs(Math.sin(bearing(wall.start, wall.end) - direction)))
    .filter((sine) => sine > alongWall)
    .map((sine) => square / sine);
  return setbacks.length === 0 ? null : Math.max(...setbacks);
};
