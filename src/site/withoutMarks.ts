import type { MarkId } from './ids.ts';
import { marksObserved } from './marksObserved.ts';
import type { Observation } from './observation.ts';
import type { Site } from './site.ts';
import { withoutEntries } from './withEntries.ts';

/** A site without these marks and without what was observed of them; nothing may stand on them. */
export const withoutMarks = (site: Site, marks: readonly MarkId[]): Site => {
  const gone = new Set(marks);
  const lost = Object.entries<Observation>(site.observations)
    .filter(([, seen]) => Object.values(marksObserved(seen)).some((mark) => gone.has(mark)))
    .map(([id]) => id);
  return withoutEntries(withoutEntries(site, 'observations', lost), 'marks', marks);
};
