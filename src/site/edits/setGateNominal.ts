import { entry } from '../entry.ts';
import type { Gate } from '../gate.ts';
import type { GateId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withGate } from '../withGate.ts';

/**
 * Sets the size that people call a gate by, in inches; null for none. It is never used as a
 * dimension. RangeError for an unknown gate and a size of zero or less.
 */
export const setGateNominal = (site: Site, id: GateId, nominal: Gate['nominal']): Site =>
  withGate(site, id, { ...entry(site, 'gates', id), nominal });
