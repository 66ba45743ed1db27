import type { PinId } from './ids.ts';
import type { Pin } from './pin.ts';
import { brokenPin } from './references.ts';
import type { Site } from './site.ts';
import { withEntry } from './withEntries.ts';

/**
 * A site with a pin added or exchanged. RangeError with one line when the pin does not fit the
 * document or its line or leg is not there.
 */
export const withPin = (site: Site, id: PinId, pin: Pin): Site => {
  const changed = withEntry(site, 'pins', id, pin);
  const broken = changed === site ? null : brokenPin(site, id, pin);
  if (broken !== null) throw new RangeError(broken);
  return changed;
};
