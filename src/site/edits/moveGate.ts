import type { Anchor } from '../anchor.ts';
import { entry } from '../entry.ts';
import type { Gate } from '../gate.ts';
import type { GateId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withGate } from '../withGate.ts';

/**
 * Anchors a gate elsewhere on its leg (offset in inches), or on another leg. RangeError for an
 * unknown gate, line or leg.
 */
export const moveGate = (
  site: Site,
  id: GateId,
  anchor: Anchor,
  onto: Partial<Pick<Gate, 'line' | 'leg'>> = {},
): Site => withGate(site, id, { ...entry(site, 'gates', id), ...onto, anchor });
