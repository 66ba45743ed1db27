import { entry } from '../entry.ts';
import type { MarkId } from '../ids.ts';
import { marksInUse } from '../marksInUse.ts';
import { quoted } from '../quoted.ts';
import type { Site } from '../site.ts';
import { withoutMarks } from '../withoutMarks.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Removes a mark on which nothing stands, with what was observed of it. RangeError for an unknown mark and for one in use. */
export const removeMark = (site: Site, id: MarkId): Site => {
  entry(site, 'marks', id);
  if (marksInUse(site).has(id)) {
    throw new RangeError(
      phrase`marks: expected a mark on which nothing stands, found ${quoted(id)}`,
    );
  }
  return withoutMarks(site, [id]);
};
