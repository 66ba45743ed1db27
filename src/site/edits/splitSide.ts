import type { FeatureId, VertexId } from '../ids.ts';
import { markAt } from '../markAt.ts';
import type { Place } from '../markAt.ts';
import { nextId } from '../nextId.ts';
import { pathFeature } from '../pathFeature.ts';
import { verticesOf } from '../pathOrder.ts';
import { sideAt } from '../sideAt.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';
import { withVertex } from '../withVertex.ts';

/**
 * Puts a corner into a side of a feature: a mark that is there, or a point that becomes one. A mark
 * at an end of the side changes nothing. RangeError for an unknown feature, side or mark.
 */
export const splitSide = (site: Site, id: FeatureId, side: VertexId, place: Place): Site => {
  const whole = sideAt(site, id, side);
  if (place === whole.start || place === whole.end) return site;
  const feature = pathFeature(site, id);
  const corner = markAt(site, place);
  const vertex = { id: nextId(site, 'vertex'), mark: corner.mark };
  const index = verticesOf(feature.path).findIndex((stop) => stop.id === side) + 1;
  const path = withVertex(feature.path, vertex, index);
  return withEntry(corner.site, 'features', id, { ...feature, path });
};
