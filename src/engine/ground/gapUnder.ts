import type { Piece } from '../../geometry/throughCapsule.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Profile, ProfileStation } from './profile.ts';
import { profileHeight } from './profileHeight.ts';

/** A straight bottom edge from post to post, over a profile; stations and heights in inches. */
export interface BottomEdge {
  readonly from: ProfileStation;
  readonly to: ProfileStation;
}

/** The room between a bottom edge and the ground at a station, and the two heights. */
export interface Room {
  readonly at: Inches;
  /** Edge less ground: below 0 the edge is buried. */
  readonly room: Inches;
  readonly edge: Inches;
  readonly ground: Inches;
}

/** What lies under a bottom edge. */
export interface GapUnder {
  /** Where the edge is highest over the ground; null where it is nowhere above it. */
  readonly gap: Room | null;
  /** Where it is deepest in the ground; null where it is nowhere below it. */
  readonly buried: Room | null;
  /** Parts of the edge outside of the shots. */
  readonly unknown: readonly Piece[];
}

const roomAt = (profile: Profile, { from, to }: BottomEdge, at: Inches): Room[] => {
  const ground = profileHeight(profile, at);
  if (ground === null) return [];
  const edge = inches(from.z + ((to.z - from.z) * (at - from.at)) / (to.at - from.at));
  return [{ at, room: inches(edge - ground), edge, ground }];
};

/**
 * The largest gap under a straight bottom edge and the deepest place that is buried, between its
 * two ends; the first of equals. Exact: both are at stations of the profile or at the ends.
 */
export const gapUnder = (profile: Profile, edge: BottomEdge): GapUnder => {
  const [start, end] = [edge.from.at, edge.to.at];
  const between = profile.known
    .flat()
    .map(({ at }) => at)
    .filter((at) => at > start && at < end);
  const rooms = [start, ...between, end].flatMap((at) => roomAt(profile, edge, at));
  const most = (sign: 1 | -1): Room | null =>
    rooms.reduce<Room | null>((best, one) => {
      const size = sign * one.room;
      return size > 0 && (best === null || size > sign * best.room) ? one : best;
    }, null);
  const unknown = profile.unknown
    .map(({ from, to }) => ({ from: Math.max(from, start), to: Math.min(to, end) }))
    .filter(({ from, to }) => from < to);
  return { gap: most(1), buried: most(-1), unknown };
};
