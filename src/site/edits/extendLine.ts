import { entry } from '../entry.ts';
import type { LineId } from '../ids.ts';
import { markAt } from '../markAt.ts';
import type { Place } from '../markAt.ts';
import { nextId } from '../nextId.ts';
import { verticesOf } from '../pathOrder.ts';
import { quoted } from '../quoted.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';
import { withVertex } from '../withVertex.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * Lengthens an open line from its `end` or its `start` to a mark, or to a point that becomes one.
 * The mark at that end again changes nothing. RangeError for an unknown line or mark, and for a
 * closed line.
 */
export const extendLine = (
  site: Site,
  id: LineId,
  place: Place,
  from: 'start' | 'end' = 'end',
): Site => {
  const line = entry(site, 'lines', id);
  if (line.closed) throw new RangeError(phrase`lines: expected an open line, found ${quoted(id)}`);
  const vertices = verticesOf(line.path);
  const index = from === 'start' ? 0 : vertices.length;
  const reached = markAt(site, place);
  if (vertices.at(from === 'start' ? 0 : -1)?.mark === reached.mark) return site;
  const vertex = { id: nextId(site, 'vertex'), mark: reached.mark };
  return withEntry(reached.site, 'lines', id, {
    ...line,
    path: withVertex(line.path, vertex, index),
  });
};
