import type { SitePoint } from '../../../geometry/point.ts';
import type { MarkId } from '../../../site/ids.ts';
import type { Site } from '../../../site/site.ts';

/** The middle of some marks, site inches; null where none of them is there. */
export const midpointOf = (site: Site, ids: readonly MarkId[]): SitePoint | null => {
  const marks = ids.flatMap((id) => site.marks[id] ?? []);
  if (marks.length === 0) return null;
  const mean = (values: readonly number[]): number =>
    values.reduce((total, value) => total + value, 0) / values.length;
  return { x: mean(marks.map(({ x }) => x)), y: mean(marks.map(({ y }) => y)) };
};
