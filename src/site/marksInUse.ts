import type { MarkId } from './ids.ts';
import { keptAlone } from './keptAlone.ts';
import type { Path } from './path.ts';
import type { Site } from './site.ts';
import { withoutMarks } from './withoutMarks.ts';

const marksOf = (entry: { readonly path: Path } | { readonly mark: MarkId }): MarkId[] =>
  'path' in entry ? Object.values(entry.path).map((vertex) => vertex.mark) : [entry.mark];

/** The marks that features stand on. */
export const marksOfFeatures = (site: Site): Set<MarkId> =>
  new Set(Object.values(site.features).flatMap(marksOf));

/** The marks that lines or features stand on. */
export const marksInUse = (site: Pick<Site, 'lines' | 'features'>): Set<MarkId> =>
  new Set([...Object.values(site.lines), ...Object.values(site.features)].flatMap(marksOf));

/**
 * The site after an edit, without those of these marks that nothing stands on any more and nothing
 * keeps: a name, that they are fixed, or what was observed between them and marks that stay. What was
 * observed of marks that go goes with them.
 */
export const withoutUnused = (before: Site, after: Site, marks: readonly MarkId[]): Site => {
  const used = marksInUse(after);
  const unused = marks.filter((mark) => !used.has(mark));
  const kept = keptAlone(before, after, unused);
  return withoutMarks(
    after,
    unused.filter((mark) => !kept.has(mark)),
  );
};

/** The marks of a line or feature, each once. */
export const ownMarks = (entry: { readonly path: Path } | { readonly mark: MarkId }): MarkId[] => [
  ...new Set(marksOf(entry)),
];
