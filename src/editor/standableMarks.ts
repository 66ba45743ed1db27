import type { SitePoint } from '../geometry/point.ts';
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
  const paths = [...Object.values(site.lines), ...features].flatMap((thing) =>
    'path' in thing ? Object.values(thing.path) : [],
  );
  const passed = new Set<string>(paths.map(({ mark }) => mark));
  const alone = features.flatMap((feature) => ('mark' in feature ? [feature.mark] : []));
  const barred = new Set<string>(alone.filter((id) => !passed.has(id)));
  return entriesOf(site.marks)
    .filter(([id]) => !barred.has(id))
    .map(([id, { x, y }]) => ({ id, point: { x, y } }));
});
