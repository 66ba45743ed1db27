import { parallelCorners } from '../geometry/parallelCorners.ts';
import type { SitePoint } from '../geometry/point.ts';
import { signedArea } from '../geometry/signedArea.ts';
import type { Feature } from './feature.ts';
import { verticesOf } from './pathOrder.ts';
import type { Site } from './site.ts';

type Boundary = Extract<Feature, { readonly kind: 'boundary' }>;

/**
 * Where the corners of a fence stand that runs so far inside a boundary, inches, one for each corner
 * of it; on the left of the way an open boundary runs. Below zero on the other side.
 */
export const placesInside = (
  site: Pick<Site, 'marks'>,
  { path, closed }: Pick<Boundary, 'path' | 'closed'>,
  inside: number,
): SitePoint[] => {
  const corners = verticesOf(path).flatMap(({ mark }): SitePoint[] => {
    const at = site.marks[mark];
    return at === undefined ? [] : [{ x: at.x, y: at.y }];
  });
  const off = closed && signedArea(corners) < 0 ? -inside : inside;
  return parallelCorners(corners, off, closed ? 'closed' : 'open');
};
