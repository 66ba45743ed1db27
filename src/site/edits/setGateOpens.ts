import { entry } from '../entry.ts';
import type { Gate } from '../gate.ts';
import type { GateId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withGate } from '../withGate.ts';

/** Lets a gate open to a side, looking along its leg from the start. RangeError for an unknown gate. */
export const setGateOpens = (site: Site, id: GateId, opens: Gate['opens']): Site =>
  withGate(site, id, { ...entry(site, 'gates', id), opens });
