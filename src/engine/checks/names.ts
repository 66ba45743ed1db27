import type { GateId, LineId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';

/** What a flag calls a gate: its label, else its id. */
export const gateName = (site: Site, id: GateId): string => site.gates[id]?.label || id;

/** What a flag calls a fence line: its label, else its id. */
export const lineName = (site: Site, id: LineId): string => site.lines[id]?.label || id;
