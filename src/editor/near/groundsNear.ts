import { boundsOf } from '../../geometry/bounds.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { signedArea } from '../../geometry/signedArea.ts';
import type { Feature } from '../../site/feature.ts';
import type { FeatureId } from '../../site/ids.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';
import { entriesOf } from '../entriesOf.ts';
import { nearOf } from './nearOf.ts';

/** A feature that is ground, its corners, and how large it is in square inches. */
export interface FeatureGround {
  readonly id: FeatureId;
  readonly corners: readonly SitePoint[];
  readonly size: number;
}

/** The corners of what is ground; none of a lot, which is no ground of its own. */
const cornersOf = (site: Site, feature: Feature): SitePoint[] => {
  if (!('path' in feature) || feature.kind === 'utility' || feature.kind === 'boundary') return [];
  return verticesOf(feature.path).flatMap(({ mark }) => site.marks[mark] ?? []);
};

const groundsOf = (site: Site): FeatureGround[] =>
  entriesOf(site.features).map(([id, feature]) => {
    const corners = cornersOf(site, feature);
    return { id, corners, size: Math.abs(signedArea(corners)) };
  });

/** The ground of features about a place: all within reach, and some beyond. */
export const groundsNear = nearOf(groundsOf, ({ corners }) => boundsOf(corners));
