import { entry } from './entry.ts';
import type { Feature } from './feature.ts';
import type { FeatureId } from './ids.ts';
import { quoted } from './quoted.ts';
import type { Site } from './site.ts';
import { phrase } from '../phrases/phrase.ts';

/** A feature that runs from mark to mark: everything but trees and notes. */
export type PathFeature = Extract<Feature, { readonly path: unknown }>;

/** Whether the last mark of a feature is joined to its first. */
export const isClosed = (feature: PathFeature): boolean =>
  feature.kind === 'boundary' ? feature.closed : feature.kind !== 'utility';

/** A feature with sides. RangeError for an unknown feature and for a tree or note. */
export const pathFeature = (site: Site, id: FeatureId): PathFeature => {
  const feature = entry(site, 'features', id);
  if ('path' in feature) return feature;
  throw new RangeError(phrase`features: expected one with sides, found ${quoted(id)}`);
};
