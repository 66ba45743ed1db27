import { sameSpot } from '../../geometry/sameSpot.ts';
import type { MarkId } from '../../site/ids.ts';
import { marksObserved } from '../../site/marksObserved.ts';
import type { Observation } from '../../site/observation.ts';
import type { Site } from '../../site/site.ts';

/**
 * The marks of which nothing is known but where satellites found them, and that stand there: not fixed,
 * drawn nowhere else by a hand, and nothing else observed.
 */
export const roughMarks = (site: Pick<Site, 'marks' | 'observations'>): ReadonlySet<MarkId> => {
  const seen = Object.values<Observation>(site.observations);
  const known = new Set(
    seen.flatMap((one) => (one.kind === 'fix' ? [] : Object.values(marksObserved(one)))),
  );
  return new Set(
    seen.flatMap((one) => {
      const mark = one.kind === 'fix' ? site.marks[one.mark] : undefined;
      if (one.kind !== 'fix' || mark === undefined || known.has(one.mark)) return [];
      return !mark.fixed && sameSpot(mark, one) ? [one.mark] : [];
    }),
  );
};
