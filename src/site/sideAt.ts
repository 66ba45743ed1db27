import type { FeatureId, VertexId } from './ids.ts';
import { legsOf, type DrawnLeg } from './legsOf.ts';
import { isClosed, pathFeature } from './pathFeature.ts';
import { quoted } from './quoted.ts';
import type { Site } from './site.ts';
import { phrase } from '../phrases/phrase.ts';

/** The sides of a feature in their order; RangeError for an unknown feature and for a tree or note. */
export const sidesOf = (site: Site, id: FeatureId): DrawnLeg[] => {
  const feature = pathFeature(site, id);
  return legsOf({ path: feature.path, closed: isClosed(feature) });
};

/** The side of a feature that starts at a vertex. RangeError as `sidesOf`, and where none does. */
export const sideAt = (site: Site, id: FeatureId, side: VertexId): DrawnLeg => {
  const found = sidesOf(site, id).find((drawn) => drawn.id === side);
  if (found !== undefined) return found;
  throw new RangeError(
    phrase`features › ${id}: expected the start of a side, found ${quoted(side)}`,
  );
};
