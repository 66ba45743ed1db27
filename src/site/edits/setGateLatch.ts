import { entry } from '../entry.ts';
import type { GateId, HardwareId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withGate } from '../withGate.ts';

/**
 * Gives a gate another latch or drop rod. RangeError for an unknown gate or latch, and for none on
 * a gate that closes.
 */
export const setGateLatch = (site: Site, id: GateId, latch: HardwareId | null): Site =>
  withGate(site, id, { ...entry(site, 'gates', id), latch });
