import type { Feature } from '../../../site/feature.ts';
import type { FeatureId, MarkId } from '../../../site/ids.ts';
import { verticesOf } from '../../../site/pathOrder.ts';
import type { Site } from '../../../site/site.ts';
import { featureNoun } from '../../../site/featureNoun.ts';

/** A boundary or paving that passes a mark, and what it is called. */
export interface CornerGround {
  readonly feature: FeatureId;
  readonly name: string;
}

/** What a sight triangle can be drawn along at a mark, whether or not it has two sides there. */
export const sightCorners = (site: Site, mark: MarkId): CornerGround[] =>
  (Object.entries(site.features) as [FeatureId, Feature][]).flatMap(([id, feature]) => {
    if (feature.kind !== 'boundary' && feature.kind !== 'paving') return [];
    if (!verticesOf(feature.path).some((vertex) => vertex.mark === mark)) return [];
    return [{ feature: id, name: feature.label.trim() || featureNoun(feature) }];
  });
