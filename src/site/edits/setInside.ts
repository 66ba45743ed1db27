import { checked } from '../checked.ts';
import { entry } from '../entry.ts';
import { followed } from '../followed.ts';
import { keptBends } from '../keptBends.ts';
import type { LineId } from '../ids.ts';
import { signedLength } from '../quantities.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/**
 * Moves a line that follows a boundary to another distance inside it, inches; null lets it follow no
 * more, where it is. A line that follows none stays as it is. RangeError for an unknown line.
 */
export const setInside = (site: Site, id: LineId, inside: number | null): Site => {
  const line = entry(site, 'lines', id);
  const { follows } = line;
  if (follows === null) return site;
  if (inside === null) return withEntry(site, 'lines', id, { ...line, follows: null });
  const by = checked(signedLength, inside, ['lines', id, 'follows', 'inside']);
  const told = withEntry(site, 'lines', id, { ...line, follows: { ...follows, inside: by } });
  return keptBends(site, followed(told));
};
