import { bearing } from '../../../geometry/bearing.ts';
import { contains } from '../../../geometry/contains.ts';
import { distance } from '../../../geometry/distance.ts';
import type { SitePoint } from '../../../geometry/point.ts';
import { subtract } from '../../../geometry/subtract.ts';
import { placeUnderlay } from '../../../site/edits/placeUnderlay.ts';
import type { UnderlayId } from '../../../site/ids.ts';
import type { Site } from '../../../site/site.ts';
import { underlayGround } from '../../../site/underlayGround.ts';
import { underlaysInOrder } from '../../../site/underlaysInOrder.ts';
import type { Selection } from '../../../store/selection.ts';
import { radians } from '../../../units/radians.ts';
import type { Touch } from '../../hit.ts';
import { turnKnob } from '../../turnKnob.ts';
import type { PictureState } from './pictureState.ts';

type Taken = Extract<PictureState, { readonly is: 'held' | 'moving' }>;

const zero: SitePoint = { x: 0, y: 0 };

/** A site in which the picture that was taken has gone with the hand, or turned with it about its middle. */
export const moved = (site: Site, { id, from, by }: Taken, to: SitePoint): Site => {
  const underlay = site.underlays[id];
  if (underlay === undefined) return site;
  if (by === 'itself') {
    return placeUnderlay(site, id, {
      about: zero,
      turn: radians(0),
      times: 1,
      by: subtract(to, from),
    });
  }
  const knob = turnKnob(underlay);
  if (knob === null) return site;
  const turn = radians(bearing(knob.about, to) - bearing(knob.about, from));
  return placeUnderlay(site, id, { about: knob.about, turn, times: 1, by: zero });
};

/** The picture whose knob a hand touches: that of the selected one, while it is not locked. */
const byKnob = (site: Site, chosen: UnderlayId | null, { at, reach }: Touch): boolean => {
  const underlay = chosen === null ? undefined : site.underlays[chosen];
  const knob = underlay === undefined || underlay.locked ? null : turnKnob(underlay);
  return knob !== null && distance(knob.at, at) <= reach;
};

/** The pictures that are not locked and show the ground at a point, the uppermost first. */
const looseAt = (site: Site, at: SitePoint): UnderlayId[] =>
  underlaysInOrder(site)
    .toReversed()
    .filter(([, underlay]) => !underlay.locked && contains(underlayGround(underlay), at))
    .map(([id]) => id);

/**
 * What a hand takes: the knob of the selected picture, else that picture, else the uppermost one that is
 * not locked; null for none. A tap on what is selected is for the one under it.
 */
export const takenAt = (site: Site, chosen: UnderlayId | null, touch: Touch): Taken | null => {
  const from = touch.at;
  if (chosen !== null && byKnob(site, chosen, touch)) {
    return { is: 'held', id: chosen, from, by: 'knob', next: chosen };
  }
  const all = looseAt(site, from);
  const at = chosen === null ? -1 : all.indexOf(chosen);
  const id = all[Math.max(0, at)];
  if (id === undefined) return null;
  const next = (at === -1 ? id : all[(at + 1) % all.length]) ?? id;
  return { is: 'held', id, from, by: 'itself', next };
};

/**
 * What a hand that comes down with the tool for pictures is there for: a mouse takes what it is on, a
 * finger draws on the picture that is selected; anywhere else a tap is a tap and a drag moves the pad.
 */
export const pictureHand = (
  site: Site,
  selection: Selection,
  touch: Touch,
  kind: 'mouse' | 'touch' | 'pen',
): 'draw' | 'tap' => {
  const chosen = selection?.kind === 'underlay' ? selection.id : null;
  const taken = takenAt(site, chosen, touch);
  if (taken === null) return 'tap';
  return kind !== 'touch' || taken.id === chosen ? 'draw' : 'tap';
};
