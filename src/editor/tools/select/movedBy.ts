import { dot } from '../../../geometry/dot.ts';
import { scale } from '../../../geometry/scale.ts';
import { unitVector } from '../../../geometry/unitVector.ts';
import type { SitePoint } from '../../../geometry/point.ts';
import { trackBearing, trackLength } from '../../../geometry/track.ts';
import { alongOf } from '../../../site/anchor.ts';
import { legTrack } from '../../../site/legTrack.ts';
import { direction } from '../../direction.ts';
import { changeShot } from '../../../site/edits/changeShot.ts';
import { moveFeature } from '../../../site/edits/moveFeature.ts';
import { moveGate } from '../../../site/edits/moveGate.ts';
import { moveMarks } from '../../../site/edits/moveMarks.ts';
import { placeUnderlay } from '../../../site/edits/placeUnderlay.ts';
import type { GateId, MarkId } from '../../../site/ids.ts';
import { radians } from '../../../units/radians.ts';
import { marksMoved } from '../../../site/marksMoved.ts';
import { entry } from '../../../site/entry.ts';
import { legAt, legGround } from '../../../site/legGround.ts';
import type { Site } from '../../../site/site.ts';
import { inches } from '../../../units/inches.ts';
import { gateSpan } from '../../gateSpan.ts';
import type { Desk } from '../../tool.ts';
import { isLocked } from '../../lockedPicture.ts';
import { movedTogether } from '../../movedTogether.ts';
import { movableLegMarks, movableLineMarks } from '../../movableMarks.ts';
import type { Pinned } from './movedPin.ts';
import type { Held } from './selectState.ts';

/** A site and its layout. */
export type Ground = Pick<Desk, 'site' | 'layout'>;

/** What moves over the ground by itself. */
export type Loose = Exclude<Held, Pinned>;

const zero: SitePoint = { x: 0, y: 0 };

/** A gate moved along its leg by what a vector has of the leg's direction; it stays on its leg. */
const gateBy = (site: Site, id: GateId, by: SitePoint): Site => {
  const gate = site.gates[id];
  const line = gate && site.lines[gate.line];
  if (gate === undefined || line === undefined) return site;
  const track = legTrack(site, line, legAt(line, gate.leg));
  const length = trackLength(track);
  if (length === 0) return site;
  const { from, offset } = gate.anchor;
  const way = direction(trackBearing(track, alongOf(gate.anchor, length)));
  const room = Math.max(0, length - gateSpan(site, gate));
  const next = offset + (from === 'end' ? -1 : 1) * dot(by, way);
  const [low, high] = from === 'middle' ? [-room / 2, room / 2] : [0, room];
  const held = inches(Math.min(high, Math.max(low, next)) + 0);
  return moveGate(site, id, { from, offset: held });
};

/** Drops the lesser of the two parts of a vector, along a leg or square to it, within reach. */
const settled = (by: SitePoint, way: SitePoint, reach: number): SitePoint => {
  const along = dot(by, way);
  const off = { x: by.x - along * way.x, y: by.y - along * way.y };
  if (Math.abs(along) <= reach) return off;
  return Math.hypot(off.x, off.y) <= reach ? scale(way, along) : by;
};

/**
 * A site in which a thing has moved by a vector in inches: all of a feature, the marks of a leg or
 * line that no feature stands on, with all that tapes hold to them, a gate along its leg, a grade shot with its height, a picture that is not locked. A leg keeps to its own direction or to the
 * square of it within `reach`. The same site where nothing can move.
 */
export const movedBy = (
  { site, layout: { survey } }: Ground,
  what: Loose,
  by: SitePoint,
  reach = 0,
): Site => {
  const move = (ids: readonly MarkId[], so: SitePoint): Site =>
    moveMarks(site, movedTogether(survey, ids), so);
  switch (what.kind) {
    case 'mark':
      return move([what.id], by);
    case 'feature': {
      const own = marksMoved(site, what.id);
      const together = movedTogether(survey, own);
      return together === own ? moveFeature(site, what.id, by) : moveMarks(site, together, by);
    }
    case 'line':
      return move(movableLineMarks(site, what.id), by);
    // a tape lies where its marks are
    case 'tape':
      return site;
    case 'shot': {
      const { x, y } = entry(site, 'shots', what.id);
      return changeShot(site, what.id, { x: x + by.x, y: y + by.y });
    }
    case 'underlay':
      if (isLocked(site, what.id)) return site;
      return placeUnderlay(site, what.id, { about: zero, turn: radians(0), times: 1, by });
    case 'gate':
      return gateBy(site, what.id, by);
    case 'leg': {
      const line = site.lines[what.line];
      if (line === undefined) return site;
      const { start, end } = legGround(site, legAt(line, what.id));
      const way = unitVector(start, end);
      const held = way === null ? by : settled(by, way, reach);
      return move(movableLegMarks(site, what.line, what.id), held);
    }
  }
};
