import { radians, type Radians } from '../units/radians.ts';
import { arcPoints } from './arcPoints.ts';
import type { Arc } from './arcToBeziers.ts';
import { bearing } from './bearing.ts';
import { bowed } from './bowed.ts';
import { distance } from './distance.ts';
import { moved } from './moved.ts';
import { nearestOnSegment } from './nearestOnSegment.ts';
import { alongArc, arcBearing, arcLength, onArc } from './onArc.ts';
import type { Point } from './point.ts';
import type { Segment } from './segment.ts';

/**
 * A way from one point to another, straight or along an arc: `bow` is its middle ordinate as `bowed`
 * takes it, 0 for a straight one. All lengths are in the unit of the space.
 */
export interface Track<Space extends string> extends Segment<Space> {
  readonly bow: number;
}

/** The arc of a track; null for a straight one and one whose ends are on one place. */
export const arcOf = <Space extends string>({
  start,
  end,
  bow,
}: Track<Space>): Arc<Space> | null =>
  bow === 0 || distance(start, end) === 0 ? null : bowed(start, end, bow);

/** How long a track is along it. */
export const trackLength = (track: Track<string>): number => {
  const arc = arcOf(track);
  return arc === null ? distance(track.start, track.end) : arcLength(arc);
};

/** The point at a length along a track; before its start and past its end it goes on as it began. */
export const trackAt = <Space extends string>(track: Track<Space>, along: number): Point<Space> => {
  const arc = arcOf(track);
  if (arc !== null) return onArc(arc, along);
  return moved(track.start, bearing(track.start, track.end), along);
};

/** The direction of a track at a length along it, from the x axis towards the y axis. */
export const trackBearing = (track: Track<string>, along: number): Radians => {
  const arc = arcOf(track);
  return arc === null ? radians(bearing(track.start, track.end)) : arcBearing(arc, along);
};

/** The place of a track that is nearest to a point: how far along it, and how far off; ends included. */
export const nearestOnTrack = <Space extends string>(
  point: Point<Space>,
  track: Track<NoInfer<Space>>,
): { readonly along: number; readonly off: number } => {
  const arc = arcOf(track);
  if (arc !== null) {
    const along = alongArc(arc, point);
    return { along, off: distance(onArc(arc, along), point) };
  }
  const near = nearestOnSegment(point, track);
  return { along: near.along * distance(track.start, track.end), off: near.distance };
};

/** Points at equal lengths along a track, its ends among them; straight pieces lie at most `off` from it. */
export const trackPoints = <Space extends string>(
  track: Track<Space>,
  off: number,
): Point<Space>[] => {
  const arc = arcOf(track);
  if (arc === null) return [track.start, track.end];
  return [track.start, ...arcPoints(arc, off).slice(1, -1), track.end];
};
