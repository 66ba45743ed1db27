import type { LineId } from '../../../site/ids.ts';
import { verticesOf } from '../../../site/pathOrder.ts';
import { entriesOf } from '../../entriesOf.ts';
import { placeOf } from '../../placeOf.ts';
import type { Stand } from '../../stand.ts';
import type { Desk } from '../../tool.ts';

/** An end at which an open line can be drawn on. */
export interface OpenEnd {
  readonly line: LineId;
  readonly end: 'start' | 'end';
}

/**
 * The line that ends at a chosen point and has between its posts what is drawn next; null for none, and
 * where two ends meet, since nobody can tell which is meant.
 */
export const openEndAt = (
  { site, plans }: Pick<Desk, 'site' | 'plans'>,
  stand: Stand,
): OpenEnd | null => {
  const place = placeOf(site, stand);
  const { kind } = plans.fence.spec.infill;
  if (typeof place !== 'string') return null;
  const ends = entriesOf(site.lines).flatMap(([line, { closed, path, spec }]): OpenEnd[] => {
    const marks = verticesOf(path).map(({ mark }) => mark);
    if (closed || marks.length < 2 || site.specs[spec]?.infill.kind !== kind) return [];
    return [
      ...(marks.at(0) === place ? [{ line, end: 'start' } as const] : []),
      ...(marks.at(-1) === place ? [{ line, end: 'end' } as const] : []),
    ];
  });
  return ends.length === 1 ? (ends[0] ?? null) : null;
};
