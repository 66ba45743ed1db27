import { bearing } from '../../geometry/bearing.ts';
import { distance } from '../../geometry/distance.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { sameSpot } from '../../geometry/sameSpot.ts';
import type { FenceLine } from '../../site/fenceLine.ts';
import type { LineId, MarkId, VertexId } from '../../site/ids.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Leg } from '../layout.ts';

/** A mark as a fence line passes it. */
export interface Stop {
  readonly vertex: VertexId;
  readonly mark: MarkId;
  readonly at: SitePoint;
}

/** A fence line on the ground: its marks one after the other and the legs between them. */
export interface Chain {
  readonly id: LineId;
  readonly line: FenceLine;
  /** No two neighbours on one spot. */
  readonly stops: readonly Stop[];
  /** Leg n runs from stop n to the next; a closed chain has as many legs as stops. */
  readonly legs: readonly Leg[];
  /** Stops left out because they stand on the spot of the one before. */
  readonly doubled: readonly Stop[];
  readonly length: Inches;
}

const stopsOf = (line: FenceLine, site: Site): Stop[] =>
  verticesOf(line.path).flatMap(({ id, mark }) => {
    const at = site.marks[mark];
    return at === undefined ? [] : [{ vertex: id, mark, at: { x: at.x, y: at.y } }];
  });

const split = (all: readonly Stop[], closed: boolean) => {
  const stops: Stop[] = [];
  const doubled: Stop[] = [];
  for (const stop of all) {
    const last = stops.at(-1);
    if (last !== undefined && sameSpot(last.at, stop.at)) doubled.push(stop);
    else stops.push(stop);
  }
  const [first, last] = [stops[0], stops.at(-1)];
  if (closed && stops.length > 1 && first && last && sameSpot(first.at, last.at)) {
    doubled.push(last);
    stops.pop();
  }
  return { stops, doubled };
};

const legsOf = (stops: readonly Stop[], closed: boolean): Leg[] => {
  let from = 0;
  return stops.slice(0, closed ? stops.length : -1).flatMap((stop, n) => {
    const next = stops[(n + 1) % stops.length];
    if (next === undefined) return [];
    const length = distance(stop.at, next.at);
    const leg: Leg = {
      id: stop.vertex,
      start: stop.at,
      end: next.at,
      length: inches(length),
      bearing: bearing(stop.at, next.at),
      from: inches(from),
    };
    from += length;
    return [leg];
  });
};

/**
 * A fence line as a chain of legs with a length. Marks on one spot count once; a line of fewer than
 * two marks has no legs. A closed line of two marks is open: there is no way round.
 */
export const chainOf = (id: LineId, line: FenceLine, site: Site): Chain => {
  const { stops, doubled } = split(stopsOf(line, site), line.closed);
  const legs = legsOf(stops, line.closed && stops.length > 2);
  const last = legs.at(-1);
  const length = inches(last === undefined ? 0 : last.from + last.length);
  return { id, line, stops, legs, doubled, length };
};

/** Whether a chain comes back to its first stop. */
export const isLoop = (chain: Chain): boolean =>
  chain.stops.length > 2 && chain.legs.length === chain.stops.length;
