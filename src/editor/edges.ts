import type { Track } from '../geometry/track.ts';
import type { FenceLine } from '../site/fenceLine.ts';
import type { FeatureKind } from '../site/feature.ts';
import type { FeatureId, LineId, MarkId, VertexId } from '../site/ids.ts';
import { legsOf } from '../site/legsOf.ts';
import type { DrawnLeg } from '../site/legsOf.ts';
import type { Site } from '../site/site.ts';
import { entriesOf } from './entriesOf.ts';
import { remembered } from './near/remembered.ts';

/** What a piece of the drawing belongs to; `id` is the vertex at which it starts. */
export type EdgeOf =
  | { readonly kind: 'leg'; readonly line: LineId; readonly id: VertexId }
  | {
      readonly kind: 'side';
      readonly feature: FeatureId;
      readonly as: FeatureKind;
      readonly id: VertexId;
    };

/** A piece between two marks: a leg of a fence line, straight or curved, or a side of a feature. */
export interface Edge extends Track<'site'> {
  readonly of: EdgeOf;
  readonly marks: readonly [MarkId, MarkId];
}

const edge = (site: Site, { start, end }: DrawnLeg, of: EdgeOf, bow = 0): Edge[] => {
  const [from, to] = [site.marks[start], site.marks[end]];
  if (from === undefined || to === undefined) return [];
  return [{ start: from, end: to, bow, of, marks: [start, end] }];
};

/** The legs of a line by their marks; the same for as long as the line is. */
const drawnLegs = remembered((line: FenceLine) => legsOf(line));

/** Every leg and every side of a site; remembered for each site. */
export const edgesOf = remembered((site: Site): readonly Edge[] => {
  const legs = entriesOf(site.lines).flatMap(([line, fence]) =>
    drawnLegs(fence).flatMap((leg) =>
      edge(site, leg, { kind: 'leg', line, id: leg.id }, fence.curved[leg.id]),
    ),
  );
  const sides = entriesOf(site.features).flatMap(([feature, thing]) => {
    if (!('path' in thing)) return [];
    const closed = 'closed' in thing ? thing.closed : thing.kind !== 'utility';
    return legsOf({ path: thing.path, closed }).flatMap((side) =>
      edge(site, side, { kind: 'side', feature, as: thing.kind, id: side.id }),
    );
  });
  return [...legs, ...sides];
});
