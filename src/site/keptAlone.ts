import type { FenceLine } from './fenceLine.ts';
import type { Feature } from './feature.ts';
import type { MarkId, ObservationId } from './ids.ts';
import { legsOf } from './legsOf.ts';
import { marksObserved } from './marksObserved.ts';
import type { Observation } from './observation.ts';
import { isClosed } from './pathFeature.ts';
import type { Site } from './site.ts';

const pair = (a: MarkId, b: MarkId): string => (a < b ? `${a} ${b}` : `${b} ${a}`);

/** Every two marks between which a leg or a side runs. */
const legPairs = (site: Site): Set<string> => {
  const lines = Object.values<FenceLine>(site.lines).flatMap(legsOf);
  const sides = Object.values<Feature>(site.features).flatMap((feature) =>
    'path' in feature ? legsOf({ path: feature.path, closed: isClosed(feature) }) : [],
  );
  return new Set([...lines, ...sides].map(({ start, end }) => pair(start, end)));
};

/** The ways that an observation is of, each between two marks; none where it is of no way. */
const waysOf = (seen: Observation): readonly (readonly [MarkId, MarkId])[] => {
  if (seen.kind === 'tape' || seen.kind === 'bearing') return [[seen.from, seen.to]];
  if (seen.kind !== 'square' && seen.kind !== 'straight') return [];
  return [
    [seen.at, seen.from],
    [seen.at, seen.to],
  ];
};

/** Whether all that an observation is of are legs and sides that go: it goes with them. */
const isOfLegs = (seen: Observation, legs: ReadonlySet<string>): boolean => {
  const ways = waysOf(seen);
  return ways.length > 0 && ways.every(([a, b]) => legs.has(pair(a, b)));
};

/**
 * Which of `marks`, on which nothing stands after an edit, stay: those that have a name, those that are
 * fixed, and those that something ties to marks that stay. A reading along legs and sides is of those:
 * it ties no mark to what they led to in `before`.
 */
export const keptAlone = (before: Site, after: Site, marks: readonly MarkId[]): Set<MarkId> => {
  const alone = new Set(marks);
  const kept = new Set(
    marks.filter((id) => {
      const mark = after.marks[id];
      return mark !== undefined && (mark.label.trim() !== '' || mark.fixed);
    }),
  );
  const named = (Object.entries(after.observations) as [ObservationId, Observation][])
    .map(([, seen]) => ({ seen, of: [...new Set(Object.values(marksObserved(seen)))] }))
    .filter(({ of }) => of.some((id) => alone.has(id)));
  if (named.length === 0) return kept;
  const legs = legPairs(before);
  const ties = named.filter(({ seen }) => !isOfLegs(seen, legs)).map(({ of }) => of);
  const stays = (id: MarkId): boolean => !alone.has(id) || kept.has(id);
  // a mark that is kept may keep the next
  for (let more = true; more;) {
    const found = ties
      .map((of) => of.filter((id) => !stays(id)))
      .flatMap((missing) => (missing.length === 1 ? missing : []));
    for (const id of found) kept.add(id);
    more = found.length > 0;
  }
  return kept;
};
