import type { Gate } from './gate.ts';
import type { GateId } from './ids.ts';
import { brokenGate } from './references.ts';
import type { Site } from './site.ts';
import { withEntry } from './withEntries.ts';

/**
 * A site with a gate added or exchanged. RangeError with one line when the gate does not fit the
 * document or points at something that is not there.
 */
export const withGate = (site: Site, id: GateId, gate: Gate): Site => {
  const changed = withEntry(site, 'gates', id, gate);
  const broken = changed === site ? null : brokenGate(site, id, gate);
  if (broken !== null) throw new RangeError(broken);
  return changed;
};
