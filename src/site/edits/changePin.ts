import { entry } from '../entry.ts';
import type { PinId } from '../ids.ts';
import type { Pin } from '../pin.ts';
import type { Site } from '../site.ts';
import { withPin } from '../withPin.ts';

/**
 * Moves a pin, or changes how far it keeps clear. RangeError for an unknown pin, line or leg and for
 * a reach of zero or less.
 */
export const changePin = (site: Site, id: PinId, change: Partial<Pin>): Site =>
  withPin(site, id, { ...entry(site, 'pins', id), ...change });
