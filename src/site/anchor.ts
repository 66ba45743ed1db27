import { add } from '../geometry/add.ts';
import { dot } from '../geometry/dot.ts';
import type { SitePoint } from '../geometry/point.ts';
import { scale } from '../geometry/scale.ts';
import { subtract } from '../geometry/subtract.ts';
import { slack } from '../geometry/tolerance.ts';
import { nearestOnTrack, trackAt, trackLength, type Track } from '../geometry/track.ts';
import { unitVector } from '../geometry/unitVector.ts';
import { inches } from '../units/inches.ts';
import type { Gate } from './gate.ts';

/** Where along its leg a gate is held; what is held there is said in `gateSchema`. */
export type Anchor = Gate['anchor'];

type Leg = Track<'site'>;

/** How far from a leg's start an anchor lies, in inches; off the leg below 0 and above its length. */
export const alongOf = (anchor: Anchor, length: number): number => {
  if (anchor.from === 'start') return anchor.offset;
  return anchor.from === 'end' ? length - anchor.offset : length / 2 + anchor.offset;
};

/** The anchor that lies so far from a leg's start, in inches, told from the end or middle asked for. */
export const anchorAt = (from: Anchor['from'], along: number, length: number): Anchor => {
  if (from === 'start') return { from, offset: inches(along) };
  return { from, offset: inches(from === 'end' ? length - along : along - length / 2) };
};

/** The point on the ground that an anchor holds; the leg's start when the leg has no length. */
export const anchoredAt = (anchor: Anchor, leg: Leg): SitePoint => {
  const along = alongOf(anchor, trackLength(leg));
  if (leg.bow !== 0) return trackAt(leg, along);
  const way = unitVector(leg.start, leg.end);
  const { x, y } = leg.start;
  return way === null ? { x, y } : add({ x, y }, scale(way, along));
};

/**
 * How far along a leg a point lies square to it, in inches from its start; on a curved one not beyond
 * its ends; 0 when it has no length.
 */
const alongLeg = (point: SitePoint, leg: Leg): number => {
  if (leg.bow !== 0) return nearestOnTrack(point, leg).along;
  const way = unitVector(leg.start, leg.end);
  return way === null ? 0 : dot(subtract(point, leg.start), way);
};

/**
 * An anchor moved from one leg to another so that it holds the same place on the ground, or the
 * place on the new leg square to it. An anchor that only rounding would change stays as it is.
 */
export const moveAnchor = (anchor: Anchor, from: Leg, to: Leg): Anchor => {
  const along = alongLeg(anchoredAt(anchor, from), to);
  const moved = anchorAt(anchor.from, along, trackLength(to));
  return Math.abs(moved.offset - anchor.offset) < slack ? anchor : moved;
};

/** As `moveAnchor`, but an anchor that was on its leg is on the new one: at the nearer end if need be. */
export const moveAnchorOnto = (anchor: Anchor, from: Leg, to: Leg): Anchor => {
  const whole = trackLength(from);
  const along = alongOf(anchor, whole);
  const was = along >= -slack && along <= whole + slack;
  const moved = moveAnchor(anchor, from, to);
  const length = trackLength(to);
  const now = alongOf(moved, length);
  if (!was || (now >= -slack && now <= length + slack)) return moved;
  return anchorAt(anchor.from, Math.min(length, Math.max(0, now)), length);
};
