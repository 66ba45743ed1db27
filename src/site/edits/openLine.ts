import { entry } from '../entry.ts';
import { gatesOf } from '../gatesOf.ts';
import type { LineId, PinId } from '../ids.ts';
import { verticesOf } from '../pathOrder.ts';
import type { Pin } from '../pin.ts';
import type { Site } from '../site.ts';
import { withEntry, withoutEntries } from '../withEntries.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * Opens a closed line: the leg from its last mark back to its first goes,
 * with its pins. An open line stays as it
 * is. RangeError for an unknown line, and while a gate stands on that leg.
 */
export const openLine = (site: Site, id: LineId): Site => {
  const line = entry(site, 'lines', id);
  if (!line.closed) return site;
  const last = verticesOf(line.path).at(-1)?.id;
  const gate = gatesOf(site, id).find(([, { leg }]) => leg === last)?.[1];
  if (gate !== undefined) {
    const name = gate.label === '' ? phrase`a gate` : gate.label;
    throw new RangeError(
      phrase`The last leg has ${name} on it: expected none, move or delete it first`,
    );
  }
  const pins = (Object.entries(site.pins) as [PinId, Pin][])
    .filter(([, pin]) => pin.line === id && pin.leg === last)
    .map(([pin]) => pin);
  return withEntry(withoutEntries(site, 'pins', pins), 'lines', id, { ...line, closed: false });
};
