import type { SitePoint } from '../geometry/point.ts';
import { nearestOnTrack, trackLength } from '../geometry/track.ts';
import type { LineId, VertexId } from '../site/ids.ts';
import type { Site } from '../site/site.ts';
import { inches } from '../units/inches.ts';
import type { Inches } from '../units/inches.ts';
import { edgesOf, type Edge } from './edges.ts';
import { edgesNear } from './near/edgesNear.ts';

/** A place along a leg of fence, in inches. */
export interface LegPlace {
  readonly line: LineId;
  readonly leg: VertexId;
  /** From the start of the leg. */
  readonly station: Inches;
  /** Of the leg, along it from mark to mark. */
  readonly length: Inches;
  /** From the point that was asked about. */
  readonly away: Inches;
}

/** The nearest of some edges that are legs, of one line if it is given; the first of those as near. */
const nearestOf = (edges: readonly Edge[], at: SitePoint, only: LineId | null): LegPlace | null => {
  const places = edges.flatMap((edge): LegPlace[] => {
    if (edge.of.kind !== 'leg' || (only !== null && edge.of.line !== only)) return [];
    const near = nearestOnTrack(at, edge);
    return [
      {
        line: edge.of.line,
        leg: edge.of.id,
        station: inches(near.along),
        length: inches(trackLength(edge)),
        away: inches(near.off),
      },
    ];
  });
  return places.reduce<LegPlace | null>(
    (best, one) => (best !== null && best.away <= one.away ? best : one),
    null,
  );
};

/** How far about a point is looked first, then farther and farther, inches; at last everywhere. */
const reaches = [240, 960, 3840, 15_360].map(inches);

/** The place on fence that is nearest to a point; on one line if it is given. Null for no fence. */
export const legNear = (site: Site, at: SitePoint, only: LineId | null = null): LegPlace | null => {
  for (const reach of reaches) {
    const found = nearestOf(edgesNear(site, { at, reach }), at, only);
    if (found !== null && found.away <= reach) return found;
  }
  return nearestOf(edgesOf(site), at, only);
};
