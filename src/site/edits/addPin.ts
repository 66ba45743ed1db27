import { nextId } from '../nextId.ts';
import type { Pin } from '../pin.ts';
import type { Site } from '../site.ts';
import { withPin } from '../withPin.ts';

/**
 * Holds a post at a place of a leg, or keeps ground clear there, under `nextId(site, 'pin')`.
 * RangeError for a line or leg that is not there and for a reach of zero or less.
 */
export const addPin = (site: Site, pin: Pin): Site => withPin(site, nextId(site, 'pin'), pin);
