import { lerp } from '../../geometry/lerp.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Segment } from '../../geometry/segment.ts';
import type { Feature } from '../../site/feature.ts';
import type { FenceLine } from '../../site/fenceLine.ts';
import type { MarkId, ObservationId } from '../../site/ids.ts';
import { legsOf } from '../../site/legsOf.ts';
import type { Observation, ObservationOf } from '../../site/observation.ts';
import { isClosed } from '../../site/pathFeature.ts';
import type { Site } from '../../site/site.ts';

/** A tape as it lies on the ground, from its hook to its reading. */
export interface LyingTape extends Segment<'site'> {
  readonly id: ObservationId;
  readonly seen: ObservationOf<'tape' | 'offset'>;
  /** Whether a leg or side that is drawn anyway lies under it. */
  readonly along: boolean;
}

const pairOf = (a: MarkId, b: MarkId): string => [a, b].toSorted().join(' ');

const drawnPairs = (site: Site): ReadonlySet<string> => {
  const legs = [
    ...Object.values<FenceLine>(site.lines).flatMap((line) => legsOf(line)),
    ...Object.values<Feature>(site.features).flatMap((feature) =>
      'path' in feature ? legsOf({ path: feature.path, closed: isClosed(feature) }) : [],
    ),
  ];
  return new Set(legs.map(({ start, end }) => pairOf(start, end)));
};

/** The foot of a mark on the line through two others; null where these are on one spot. */
const footOn = (here: SitePoint, start: SitePoint, end: SitePoint): SitePoint | null => {
  const way = { x: end.x - start.x, y: end.y - start.y };
  const square = way.x * way.x + way.y * way.y;
  if (square === 0) return null;
  const share = ((here.x - start.x) * way.x + (here.y - start.y) * way.y) / square;
  return lerp<'site'>(start, end, share);
};

/** Every tape of a site and every reading square off a line, as it lies on the ground. */
export const lyingTapes = (site: Site): LyingTape[] => {
  const pairs = drawnPairs(site);
  return (Object.entries(site.observations) as [ObservationId, Observation][]).flatMap(
    ([id, seen]): LyingTape[] => {
      if (seen.kind !== 'tape' && seen.kind !== 'offset') return [];
      const [from, to] = [site.marks[seen.from], site.marks[seen.to]];
      if (from === undefined || to === undefined) return [];
      if (seen.kind === 'tape') {
        return [{ id, seen, start: from, end: to, along: pairs.has(pairOf(seen.from, seen.to)) }];
      }
      const here = site.marks[seen.at];
      const foot = here === undefined ? null : footOn(here, from, to);
      return here === undefined || foot === null
        ? []
        : [{ id, seen, start: here, end: foot, along: false }];
    },
  );
};
