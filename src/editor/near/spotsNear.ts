import { boundsOf, expandBounds, type Bounds } from '../../geometry/bounds.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { FeatureId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import { entriesOf } from '../entriesOf.ts';
import { nearOf } from './nearOf.ts';

/** A feature at one mark, and how thick it is there: a trunk's radius, inches. */
export interface FeatureSpot {
  readonly id: FeatureId;
  readonly at: SitePoint;
  readonly trunk: number;
}

const spotsOf = (site: Site): FeatureSpot[] =>
  entriesOf(site.features).flatMap(([id, feature]): FeatureSpot[] => {
    const at = 'mark' in feature ? site.marks[feature.mark] : undefined;
    if (at === undefined) return [];
    return [{ id, at, trunk: feature.kind === 'tree' ? feature.trunk : 0 }];
  });

const boundsOfSpot = ({ at, trunk }: FeatureSpot): Bounds | null => {
  const point = boundsOf([at]);
  return point === null ? null : expandBounds(point, trunk);
};

/** The trees and notes about a place: all within reach, and some beyond. */
export const spotsNear = nearOf(spotsOf, boundsOfSpot);
