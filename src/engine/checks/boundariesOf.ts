import { edges as edgesOf } from '../../geometry/polygon.ts';
import { nearestOnSegment } from '../../geometry/nearestOnSegment.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Segment } from '../../geometry/segment.ts';
import type { Feature } from '../../site/feature.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';

type Boundary = Extract<Feature, { readonly kind: 'boundary' }>;

/** A boundary of a site, and how far a place lies off the nearest of its sides, inches. */
export interface BoundarySides {
  readonly feature: Boundary;
  readonly off: (at: SitePoint) => number;
}

const sidesOf = (site: Site, { path, closed }: Boundary): Segment<'site'>[] => {
  const corners = verticesOf(path).flatMap(({ mark }): readonly SitePoint[] => {
    const at = site.marks[mark];
    return at === undefined ? [] : [at];
  });
  return closed ? edgesOf(corners) : edgesOf(corners).slice(0, -1);
};

const nearest = (sides: readonly Segment<'site'>[], at: SitePoint): number =>
  Math.min(...sides.map((side) => nearestOnSegment(at, side).distance));

/** The boundaries of a site with their sides; one without a side is infinitely far off. */
export const boundariesOf = (site: Site): BoundarySides[] =>
  Object.values<Feature>(site.features).flatMap((feature) => {
    if (feature.kind !== 'boundary') return [];
    const sides = sidesOf(site, feature);
    return [{ feature, off: (at: SitePoint) => nearest(sides, at) }];
  });
