import type { MarkId } from './ids.ts';
import type { Path } from './path.ts';
import type { Site } from './site.ts';
import { withoutMarks } from './withoutMarks.ts';

const marksOf = (entry: { readonly path: Path } | { readonly mark: MarkId }): MarkId[] =>
  'path' in entry ? Object.values(entry.path).map((vertex) => vertex.mark) : [entry.mark];

/** The marks that features stand on. */
export const marksOfFeatures = (site: Site): Set<MarkId> =>
  new Set(Object.values(site.features).flatMap(marksOf));

/** The marks that lines or features stand on. */
export const marksInUse = (site: Site): Set<MarkId> =>
  new Set([...Object.values(site.lines), ...Object.values(site.features)].flatMap(marksOf));

/** A site without those of these marks that nothing stands on, and what was observed of them. */
export const withoutUnused = (site: Site, marks: readonly MarkId[]): Site => {
  const used = marksInUse(site);
  return withoutMarks(
    site,
    marks.filter((mark) => !used.has(mark)),
  );
};

/** The marks of a line or feature, each once. */
export const ownMarks = (entry: { readonly path: Path } | { readonly mark: MarkId }): MarkId[] => [
  ...new Set(marksOf(entry)),
];
