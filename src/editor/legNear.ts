import { distance } from '../geometry/distance.ts';
import { nearestOnSegment } from '../geometry/nearestOnSegment.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { LineId, VertexId } from '../site/ids.ts';
import type { Site } from '../site/site.ts';
import { inches } from '../units/inches.ts';
import type { Inches } from '../units/inches.ts';
import { edgesOf } from './edges.ts';

/** A place along a leg of fence, in inches. */
export interface LegPlace {
  readonly line: LineId;
  readonly leg: VertexId;
  /** From the start of the leg. */
  readonly station: Inches;
  /** Of the leg, between its marks. */
  readonly length: Inches;
  /** From the point that was asked about. */
  readonly away: Inches;
}

/** The place on fence that is nearest to a point; on one line if it is given. Null for no fence. */
export const legNear = (site: Site, at: SitePoint, only: LineId | null = null): LegPlace | null => {
  const places = edgesOf(site).flatMap((edge): LegPlace[] => {
    if (edge.of.kind !== 'leg' || (only !== null && edge.of.line !== only)) return [];
    const near = nearestOnSegment(at, edge);
    const length = distance(edge.start, edge.end);
    return [
      {
        line: edge.of.line,
        leg: edge.of.id,
        station: inches(near.along * length),
        length: inches(length),
        away: inches(near.distance),
      },
    ];
  });
  return places.reduce<LegPlace | null>(
    (best, one) => (best !== null && best.away <= one.away ? best : one),
    null,
  );
};
