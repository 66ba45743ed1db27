import { withoutAnchored } from '../anchoredOn.ts';
import { entry } from '../entry.ts';
import type { LineId } from '../ids.ts';
import { ownMarks, withoutUnused } from '../marksInUse.ts';
import type { Site } from '../site.ts';
import { withoutEntries } from '../withEntries.ts';

/**
 * Removes a line with its gates and pins, and those of its marks on which nothing else stands and
 * that nothing keeps (`withoutUnused`). RangeError for an unknown line.
 */
export const removeLine = (site: Site, id: LineId): Site => {
  const line = entry(site, 'lines', id);
  const without = withoutEntries(withoutAnchored(site, id), 'lines', [id]);
  return withoutUnused(site, without, ownMarks(line));
};
