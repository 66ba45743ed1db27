import type { GateId, LineId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import { asItIs } from '../../phrases/phrase.ts';

/** On one line, as every message is; a file may hold a label of several. Nothing for none. */
export const oneLine = (label: string | undefined): string =>
  label === undefined || label === '' ? '' : asItIs(label.replace(/\s+/g, ' ').trim());

/** What a flag calls a gate: its label, else its id. */
export const gateName = (site: Site, id: GateId): string => oneLine(site.gates[id]?.label) || id;

/** What a flag calls a fence line: its label, else its id. */
export const lineName = (site: Site, id: LineId): string => oneLine(site.lines[id]?.label) || id;
