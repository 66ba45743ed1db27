import { entry } from '../entry.ts';
import { gatesOf } from '../gatesOf.ts';
import type { LineId } from '../ids.ts';
import { verticesOf } from '../pathOrder.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/**
 * Opens a closed line: the leg from its last mark back to its first goes. An open line stays as it
 * is. RangeError for an unknown line, and while a gate stands on that leg.
 */
export const openLine = (site: Site, id: LineId): Site => {
  const line = entry(site, 'lines', id);
  if (!line.closed) return site;
  const last = verticesOf(line.path).at(-1)?.id;
  const gate = gatesOf(site, id).find(([, { leg }]) => leg === last)?.[1];
  if (gate !== undefined) {
    const name = gate.label === '' ? 'a gate' : gate.label;
    throw new RangeError(`The last leg has ${name} on it: expected none, move or delete it first`);
  }
  return withEntry(site, 'lines', id, { ...line, closed: false });
};
