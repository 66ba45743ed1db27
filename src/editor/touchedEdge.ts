import { nearestOnTrack } from '../geometry/track.ts';
import type { Site } from '../site/site.ts';
import type { Edge } from './edges.ts';
import type { Touch } from './hit.ts';
import { edgesNear } from './near/edgesNear.ts';

/** The leg or side within reach that is nearest to a touch; null for none. */
export const touchedEdge = (site: Site, touch: Touch): Edge | null =>
  edgesNear(site, touch)
    .map((edge) => ({ edge, off: nearestOnTrack(touch.at, edge).off }))
    .filter(({ off }) => off <= touch.reach)
    .toSorted((a, b) => a.off - b.off)[0]?.edge ?? null;
