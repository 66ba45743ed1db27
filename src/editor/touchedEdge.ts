import { nearestOnTrack } from '../geometry/track.ts';
import type { Site } from '../site/site.ts';
import { edgesOf, type Edge } from './edges.ts';
import type { Touch } from './hit.ts';

/** The leg or side within reach that is nearest to a touch; null for none. */
export const touchedEdge = (site: Site, { at, reach }: Touch): Edge | null =>
  edgesOf(site)
    .map((edge) => ({ edge, off: nearestOnTrack(at, edge).off }))
    .filter(({ off }) => off <= reach)
    .toSorted((a, b) => a.off - b.off)[0]?.edge ?? null;
