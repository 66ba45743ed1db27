import { entry } from '../entry.ts';
import type { LineId } from '../ids.ts';
import { keptLegNotes } from '../legNotes.ts';
import { verticesOf } from '../pathOrder.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * Closes a line: a last leg runs back to its first mark. A line that already came back to its
 * first mark loses the vertex that is there twice. RangeError for an unknown line and for one of
 * fewer than three marks.
 */
export const closeLine = (site: Site, id: LineId): Site => {
  const line = entry(site, 'lines', id);
  if (line.closed) return site;
  const vertices = verticesOf(line.path);
  const back = vertices.length > 1 && vertices.at(-1)?.mark === vertices[0]?.mark;
  const rest = back ? vertices.slice(0, -1) : vertices;
  if (rest.length < 3) {
    throw new RangeError(
      phrase`lines › ${id}: expected three marks or more to close, found ${rest.length}`,
    );
  }
  const path = Object.fromEntries(rest.map(({ id: vertex, ...stop }) => [vertex, stop]));
  const notes = keptLegNotes(line, (vertex) => Object.hasOwn(path, vertex));
  return withEntry(site, 'lines', id, { ...line, closed: true, path, ...notes });
};
