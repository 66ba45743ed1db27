import type { AsSet } from '../asSet.ts';
import { entry } from '../entry.ts';
import type { GateId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withGate } from '../withGate.ts';

/**
 * Keeps what the crew found when the posts of a gate were set, or drops it with null. RangeError
 * for an unknown gate, for a length that cannot be, and for leaves that are not the gate's.
 */
export const recordAsSet = (site: Site, id: GateId, asSet: AsSet | null): Site =>
  withGate(site, id, { ...entry(site, 'gates', id), asSet });
