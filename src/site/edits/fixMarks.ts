import { entry } from '../entry.ts';
import type { MarkId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withEntries } from '../withEntries.ts';

/** Fixes marks where they are, so that nothing observed moves them. RangeError for an unknown mark. */
export const fixMarks = (site: Site, ids: readonly MarkId[]): Site => withFixed(site, ids, true);

/** Lets marks be moved by what is observed of them. RangeError for an unknown mark. */
export const freeMarks = (site: Site, ids: readonly MarkId[]): Site => withFixed(site, ids, false);

const withFixed = (site: Site, ids: readonly MarkId[], fixed: boolean): Site => {
  const marks = ids.map((id) => [id, { ...entry(site, 'marks', id), fixed }] as const);
  return withEntries(site, 'marks', Object.fromEntries(marks));
};
