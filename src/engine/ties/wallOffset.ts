import { cross } from '../../geometry/cross.ts';
import { distance } from '../../geometry/distance.ts';
import { dot } from '../../geometry/dot.ts';
import { moved } from '../../geometry/moved.ts';
import { bearing } from '../../geometry/bearing.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { subtract } from '../../geometry/subtract.ts';
import { slack } from '../../geometry/tolerance.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { roundLength } from '../../units/roundLength.ts';
import type { Reference } from './reference.ts';

/** A straight wall of a building, or a leg of a boundary, between two marks. */
export interface Edge {
  readonly of: 'building' | 'boundary';
  readonly start: Reference;
  readonly end: Reference;
}

/** A place by how far along an edge it is from a corner of it, and how far square off; inches, level. */
export interface WallOffset {
  readonly of: Edge['of'];
  /** The corner that is measured from, the nearer one, and the other end of the edge. */
  readonly from: Reference;
  readonly to: Reference;
  readonly along: Inches;
  readonly off: Inches;
  /** Of one who stands at `from` and looks to `to`. */
  readonly side: 'left' | 'right';
}

/** A wall can be seen and a boundary has to be strung: a wall serves as far off again. Ours. */
const weights: Readonly<Record<Edge['of'], number>> = { building: 1, boundary: 2 };

/** The foot of the perpendicular on an edge; null where it lies beyond its ends. */
const footOn = (at: SitePoint, { start, end }: Edge) => {
  const length = distance(start.at, end.at);
  if (length <= slack) return null;
  const [way, off] = [subtract(end.at, start.at), subtract(at, start.at)];
  const along = dot(way, off) / length;
  if (along < -slack || along > length + slack) return null;
  const left = cross(way, off) / length;
  return { along: Math.min(length, Math.max(0, along)), left, length };
};

/** Where a place lies square off an edge of the ground that it is nearest to; null where it is off none. */
export const wallOffset = (
  at: SitePoint,
  edges: readonly Edge[],
  lengths: LengthStyle,
): WallOffset | null => {
  const feet = edges.flatMap((edge) => {
    const foot = footOn(at, edge);
    return foot === null ? [] : [{ edge, ...foot }];
  });
  const cost = ({ edge, left }: (typeof feet)[number]): number => Math.abs(left) * weights[edge.of];
  const [near] = feet.toSorted((a, b) => cost(a) - cost(b));
  if (near === undefined) return null;
  const { edge, along, left, length } = near;
  const turned = along > length / 2;
  const isLeft = turned ? left < 0 : left > 0;
  return {
    of: edge.of,
    from: turned ? edge.end : edge.start,
    to: turned ? edge.start : edge.end,
    along: roundLength(inches(turned ? length - along : along), lengths),
    off: roundLength(inches(Math.abs(left)), lengths),
    side: isLeft ? 'left' : 'right',
  };
};

/** The place that an offset gives. */
export const placeOfOffset = ({ from, to, along, off, side }: WallOffset): SitePoint => {
  const way = bearing(from.at, to.at);
  const across = way + (side === 'left' ? Math.PI / 2 : -Math.PI / 2);
  const foot = moved(from.at, way, along);
  return { x: foot.x + off * Math.cos(across), y: foot.y + off * Math.sin(across) };
};
