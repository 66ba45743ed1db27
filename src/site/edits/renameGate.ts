import { entry } from '../entry.ts';
import type { GateId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withGate } from '../withGate.ts';

/** Gives a gate another label. RangeError for an unknown gate or a label of over 200 characters. */
export const renameGate = (site: Site, id: GateId, label: string): Site =>
  withGate(site, id, { ...entry(site, 'gates', id), label });
