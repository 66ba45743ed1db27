import { add } from '../../../geometry/add.ts';
import { dot } from '../../../geometry/dot.ts';
import type { SitePoint } from '../../../geometry/point.ts';
import { trackBearing } from '../../../geometry/track.ts';
import { anchorAt } from '../../../site/anchor.ts';
import { addPin } from '../../../site/edits/addPin.ts';
import { changePin } from '../../../site/edits/changePin.ts';
import { nextId } from '../../../site/nextId.ts';
import type { PinId } from '../../../site/ids.ts';
import type { Pin } from '../../../site/pin.ts';
import type { Site } from '../../../site/site.ts';
import { pinOf } from '../../../store/pinOf.ts';
import { inches } from '../../../units/inches.ts';
import { direction } from '../../direction.ts';
import { anchorFrom } from '../../gateAnchor.ts';
import { legNear } from '../../legNear.ts';
import { pinGround } from '../../pinGround.ts';
import { postPlace } from '../../postPlace.ts';
import type { Desk } from '../../tool.ts';
import type { Held } from './selectState.ts';

/** What moves along a leg by its pin. */
export type Pinned = Extract<Held, { readonly kind: 'post' | 'pin' }>;

/** What a move leaves, and what is then selected. */
export interface Moved {
  readonly site: Site;
  readonly select: Held;
}

/** The pin of a thing: its own, or the one that would hold a post where the bays put it. */
const pinFor = ({ site, layout }: Desk, what: Pinned): { id: PinId; pin: Pin } | null => {
  const own = what.kind === 'pin' ? what.id : pinOf(what.id);
  const known = own === null ? undefined : site.pins[own];
  if (own !== null) return known === undefined ? null : { id: own, pin: known };
  const place = what.kind === 'post' ? postPlace(site, layout, what.id) : null;
  if (place === null) return null;
  const { line, leg, station, length } = place;
  const anchor = anchorAt('start', station, length);
  return { id: nextId(site, 'pin'), pin: { line, leg, anchor, holds: { kind: 'post' } } };
};

const written = (site: Site, what: Pinned, id: PinId, pin: Pin): Moved => ({
  site: id in site.pins ? changePin(site, id, pin) : addPin(site, pin),
  select: what.kind === 'pin' ? what : { kind: 'post', id: `post:${id}` },
});

/**
 * A post or kept-clear ground goes by as much as the hand (inches), along its line, in whole inches
 * or centimetres, measured from the end that it was measured from. A post that nothing held is held
 * from then on, from the start of its leg.
 */
export const pinDragged = (desk: Desk, what: Pinned, by: SitePoint): Moved => {
  const found = pinFor(desk, what);
  const ground = found === null ? null : pinGround(desk.site, found.pin);
  if (found === null || ground === null) return { site: desk.site, select: what };
  const { id, pin } = found;
  const place = legNear(desk.site, add(ground.at, by), pin.line);
  if (place === null) return { site: desk.site, select: what };
  const anchor = anchorFrom(pin.anchor.from, {
    length: place.length,
    station: place.station,
    span: inches(0),
    reach: inches(0),
    system: desk.site.lengths.system,
  });
  return written(desk.site, what, id, { ...pin, leg: place.leg, anchor });
};

/** As `pinDragged`, by what a vector has of its leg's direction, to the inch fraction; it stays on its leg. */
export const pinNudged = (desk: Desk, what: Pinned, by: SitePoint): Moved => {
  const found = pinFor(desk, what);
  const ground = found === null ? null : pinGround(desk.site, found.pin);
  if (found === null || ground === null || ground.length === 0) {
    return { site: desk.site, select: what };
  }
  const way = direction(trackBearing(ground.leg, ground.station));
  const { id, pin } = found;
  const along = Math.min(ground.length, Math.max(0, ground.station + dot(by, way)));
  const anchor = anchorAt(pin.anchor.from, along, ground.length);
  return written(desk.site, what, id, { ...pin, anchor });
};
