import { entry } from '../entry.ts';
import { gatesOf } from '../gatesOf.ts';
import type { LineId } from '../ids.ts';
import { ownMarks, withoutUnused } from '../marksInUse.ts';
import type { Site } from '../site.ts';
import { withoutEntries } from '../withEntries.ts';

/**
 * Removes a line with its gates, and those of its marks on which nothing else stands. RangeError
 * for an unknown line.
 */
export const removeLine = (site: Site, id: LineId): Site => {
  const line = entry(site, 'lines', id);
  const gates = gatesOf(site, id).map(([gate]) => gate);
  const without = withoutEntries(withoutEntries(site, 'gates', gates), 'lines', [id]);
  return withoutUnused(without, ownMarks(line));
};
