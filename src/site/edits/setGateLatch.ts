import { entry } from '../entry.ts';
import type { GateId, HardwareId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withGate } from '../withGate.ts';

/** Gives a gate another latch or drop rod. RangeError for an unknown gate or latch. */
export const setGateLatch = (site: Site, id: GateId, latch: HardwareId): Site =>
  withGate(site, id, { ...entry(site, 'gates', id), latch });
