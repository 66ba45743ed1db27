import { boundsOf } from '../../geometry/bounds.ts';
import type { Segment } from '../../geometry/segment.ts';
import type { PinId } from '../../site/ids.ts';
import type { Pin } from '../../site/pin.ts';
import type { Site } from '../../site/site.ts';
import { entriesOf } from '../entriesOf.ts';
import { pinGround } from '../pinGround.ts';
import { nearOf } from './nearOf.ts';

/** A pin and what of the ground it holds. */
export interface PinPlace {
  readonly id: PinId;
  readonly holds: Pin['holds']['kind'];
  readonly body: Segment<'site'>;
}

const placesOf = (site: Site): PinPlace[] =>
  entriesOf(site.pins).flatMap(([id, pin]): PinPlace[] => {
    const ground = pinGround(site, pin);
    return ground === null ? [] : [{ id, holds: pin.holds.kind, body: ground.body }];
  });

/** The pins about a place that are on a line: all within reach, and some beyond. */
export const pinsNear = nearOf(placesOf, ({ body }) => boundsOf([body.start, body.end]));
