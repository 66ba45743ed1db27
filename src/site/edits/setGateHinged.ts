import { entry } from '../entry.ts';
import type { Gate } from '../gate.ts';
import type { GateId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withGate } from '../withGate.ts';

/** Hangs a single leaf from the post nearer to that end of the leg. RangeError for an unknown gate. */
export const setGateHinged = (site: Site, id: GateId, hingedAt: Gate['hingedAt']): Site =>
  withGate(site, id, { ...entry(site, 'gates', id), hingedAt });
