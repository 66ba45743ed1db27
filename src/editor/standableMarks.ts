import type { SitePoint } from '../geometry/point.ts';
import type { FenceLine } from '../site/fenceLine.ts';
import type { MarkId } from '../site/ids.ts';
import type { Site } from '../site/site.ts';
import { entriesOf } from './entriesOf.ts';
import { remembered } from './near/remembered.ts';

/** A mark with its name. */
export interface NamedMark {
  readonly id: MarkId;
  readonly point: SitePoint;
}

/** The marks that fence can stand at: all but those that only trees or notes stand at; remembered for each site. */
export const standableMarks = remembered((site: Site): readonly NamedMark[] => {
  const features = Object.values(site.features);
  const barred = new Set<string>(
    features.flatMap((feature) => ('mark' in feature ? [feature.mark] : [])),
  );
  if (barred.size > 0) {
    for (const thing of [...Object.values<FenceLine>(site.lines), ...features]) {
      if (!('path' in thing)) continue;
      for (const { mark } of Object.values(thing.path)) barred.delete(mark);
    }
  }
  return entriesOf(site.marks)
    .filter(([id]) => !barred.has(id))
    .map(([id, { x, y }]) => ({ id, point: { x, y } }));
});
