import type { MarkId } from '../../site/ids.ts';
import { marksObserved } from '../../site/marksObserved.ts';
import type { Observation } from '../../site/observation.ts';
import type { Site } from '../../site/site.ts';

/** The marks of which nothing is known but where satellites put them: not fixed, and nothing else observed. */
export const roughMarks = (site: Site): ReadonlySet<MarkId> => {
  const seen = Object.values<Observation>(site.observations);
  const known = new Set(
    seen.flatMap((one) => (one.kind === 'fix' ? [] : Object.values(marksObserved(one)))),
  );
  return new Set(
    seen.flatMap((one) =>
      one.kind === 'fix' && !known.has(one.mark) && site.marks[one.mark]?.fixed === false
        ? [one.mark]
        : [],
    ),
  );
};
