import type { FeatureId, VertexId } from '../ids.ts';
import { leastMarks } from '../leastMarks.ts';
import { withoutUnused } from '../marksInUse.ts';
import { pathFeature } from '../pathFeature.ts';
import { quoted } from '../quoted.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';
import { phrase } from '../../phrases/phrase.ts';
import { featureWords } from '../../site/featureWords.ts';

/**
 * Takes a corner out of a feature, and its mark if nothing else stands on it and nothing keeps it
 * (`withoutUnused`); the sides before and after become one. RangeError for an unknown feature or
 * corner, and where too few would be left: three round ground, two along a line.
 */
export const removeCorner = (site: Site, id: FeatureId, corner: VertexId): Site => {
  const feature = pathFeature(site, id);
  const gone = feature.path[corner];
  if (!Object.hasOwn(feature.path, corner) || gone === undefined) {
    throw new RangeError(
      phrase`features › ${id} › path: expected a corner of it, found ${quoted(corner)}`,
    );
  }
  const rest = Object.entries(feature.path).filter(([stop]) => stop !== corner);
  const least = leastMarks(feature);
  if (rest.length < least) {
    throw new RangeError(
      phrase`A ${featureWords[feature.kind]} needs ${least} marks: expected one to spare, found ${rest.length + 1}`,
    );
  }
  const shorter = { ...feature, path: Object.fromEntries(rest) };
  return withoutUnused(site, withEntry(site, 'features', id, shorter), [gone.mark]);
};
