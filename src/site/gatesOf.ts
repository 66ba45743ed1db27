import type { Gate } from './gate.ts';
import type { GateId, LineId } from './ids.ts';
import type { Site } from './site.ts';

/** The gates of one line, with their ids. */
export const gatesOf = (site: Site, line: LineId): (readonly [GateId, Gate])[] =>
  (Object.entries(site.gates) as [GateId, Gate][]).filter(([, gate]) => gate.line === line);
