import type { Feature } from './feature.ts';
import type { FenceLine } from './fenceLine.ts';
import type { MarkId } from './ids.ts';
import { legsOf } from './legsOf.ts';
import { isClosed } from './pathFeature.ts';
import type { Path } from './path.ts';
import type { Site } from './site.ts';

/** Where a fence line or feature turns: the mark, and the marks before and after it. */
export interface Turn {
  readonly at: MarkId;
  readonly from: MarkId;
  readonly to: MarkId;
}

const turnsOn = (thing: { readonly path: Path; readonly closed: boolean }, at: MarkId): Turn[] => {
  const legs = legsOf(thing);
  const before = legs.filter((leg) => leg.end === at);
  const after = legs.filter((leg) => leg.start === at);
  return before.flatMap(({ start: from, next }) =>
    after
      .filter(({ id, end }) => id === next && end !== from)
      .map(({ end: to }) => ({ at, from, to })),
  );
};

/** Every turn at a mark: of the fence lines, then of the features that pass it. */
export const turnsAt = (site: Site, at: MarkId): Turn[] => [
  ...Object.values<FenceLine>(site.lines).flatMap((line) => turnsOn(line, at)),
  ...Object.values<Feature>(site.features).flatMap((feature) =>
    'path' in feature ? turnsOn({ path: feature.path, closed: isClosed(feature) }, at) : [],
  ),
];
