import { distance } from '../geometry/distance.ts';
import { nearestOnSegment } from '../geometry/nearestOnSegment.ts';
import { spot } from '../geometry/tolerance.ts';
import { nearestOnTrack, trackAt } from '../geometry/track.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { MarkId } from '../site/ids.ts';
import type { Site } from '../site/site.ts';
import type { Inches } from '../units/inches.ts';
import type { Edge, EdgeOf } from './edges.ts';
import { edgesNear } from './near/edgesNear.ts';
import { marksNear } from './near/marksNear.ts';
import type { About } from './near/squareAbout.ts';
import type { NamedMark } from './standableMarks.ts';

/** What a snapped point stands on: a mark, or somewhere on a leg or side. */
export type Footing = { readonly kind: 'mark'; readonly id: MarkId } | EdgeOf;

/** The marks, legs and sides of a site that can be stood on: all without some marks and what is drawn from them. */
export interface Ground {
  readonly site: Site;
  readonly except: readonly MarkId[];
}

const marksAbout = ({ site, except }: Ground, about: About): NamedMark[] =>
  marksNear(site, about).filter(({ id }) => !except.includes(id));

/** Those of some legs and sides that are of a ground. */
export const ofGround = ({ except }: Ground, edges: readonly Edge[]): Edge[] =>
  edges.filter(({ marks }) => !marks.some((id) => except.includes(id)));

const nearest = <T extends { readonly distance: number }>(
  all: readonly T[],
  reach: number,
): T | null =>
  all
    .filter((one) => one.distance <= reach)
    .reduce<T | null>((best, one) => (best && best.distance <= one.distance ? best : one), null);

/** The nearest mark within reach (inches) of a point; null for none. */
export const markNear = (ground: Ground, at: SitePoint, reach: Inches) =>
  nearest(
    marksAbout(ground, { at, reach }).map((mark) => ({
      ...mark,
      distance: distance(at, mark.point),
    })),
    reach,
  );

/** The point of a leg or side that is nearest to another; of a curved leg the one on its arc. */
export const onEdge = (at: SitePoint, edge: Edge) => {
  if (edge.bow === 0) return nearestOnSegment(at, edge);
  const { along, off } = nearestOnTrack(at, edge);
  return { point: trackAt(edge, along), distance: off };
};

/** The nearest leg or side within reach (inches) of a point, and where; a leg if both are as near. */
export const edgeNear = (ground: Ground, at: SitePoint, reach: Inches) =>
  nearest(
    ofGround(ground, edgesNear(ground.site, { at, reach })).map((edge) => ({
      edge,
      ...onEdge(at, edge),
    })),
    reach,
  );

/** What lies at a point itself: a mark before a leg or side; null on open ground. */
export const footingIn = (ground: Ground, point: SitePoint): Footing | null => {
  const mark = markNear(ground, point, spot);
  if (mark !== null) return { kind: 'mark', id: mark.id };
  return edgeNear(ground, point, spot)?.edge.of ?? null;
};
