import { bearing } from '../../geometry/bearing.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { trackLength } from '../../geometry/track.ts';
import type { FenceLine } from '../../site/fenceLine.ts';
import type { LineId, MarkId, VertexId } from '../../site/ids.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Leg } from '../layout.ts';
import type { Spots } from './spotsOf.ts';

/** A mark as a fence line passes it. */
export interface Stop {
  /** The vertex at which the leg after it starts. */
  readonly vertex: VertexId;
  /** The mark that stands for its spot, and the one that the line was drawn to. */
  readonly mark: MarkId;
  readonly drawn: MarkId;
  readonly at: SitePoint;
}

/** A stop left out because the next one stands on the same spot: a leg without length. */
export interface Doubled extends Stop {
  /** Whether the next one is that very mark again. */
  readonly again: boolean;
}

/** A fence line on the ground: its marks one after the other and the legs between them. */
export interface Chain {
  readonly id: LineId;
  readonly line: FenceLine;
  /** No two neighbours on one spot. */
  readonly stops: readonly Stop[];
  /** Leg n runs from stop n to the next; a closed chain has as many legs as stops. */
  readonly legs: readonly Leg[];
  /** Under the vertices whose legs have no length. */
  readonly doubled: readonly Doubled[];
  readonly length: Inches;
}

const stopsOf = (line: FenceLine, site: Site, spots: Spots): Stop[] =>
  verticesOf(line.path).flatMap(({ id, mark: drawn }) => {
    const mark = spots.get(drawn) ?? drawn;
    const at = site.marks[mark];
    return at === undefined ? [] : [{ vertex: id, mark, drawn, at: { x: at.x, y: at.y } }];
  });

const split = (all: readonly Stop[], closed: boolean) => {
  const stops: Stop[] = [];
  const doubled: Doubled[] = [];
  for (const stop of all) {
    const last = stops.at(-1);
    if (last?.mark !== stop.mark) {
      stops.push(stop);
      continue;
    }
    // the leg from the one before has no length: the next leg starts at this one
    doubled.push({ ...last, again: last.drawn === stop.drawn });
    stops.splice(-1, 1, stop);
  }
  const [first, last] = [stops[0], stops.at(-1)];
  if (closed && stops.length > 1 && first && last && first.mark === last.mark) {
    doubled.push({ ...last, again: first.drawn === last.drawn });
    stops.pop();
  }
  return { stops, doubled };
};

const legsOf = (stops: readonly Stop[], closed: boolean, { curved }: FenceLine): Leg[] => {
  let from = 0;
  return stops.slice(0, closed ? stops.length : -1).flatMap((stop, n) => {
    const next = stops[(n + 1) % stops.length];
    if (next === undefined) return [];
    const track = { start: stop.at, end: next.at, bow: curved[stop.vertex] ?? 0 };
    const length = trackLength(track);
    const leg: Leg = {
      id: stop.vertex,
      ...track,
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
export const chainOf = (id: LineId, line: FenceLine, site: Site, spots: Spots): Chain => {
  const { stops, doubled } = split(stopsOf(line, site, spots), line.closed);
  const legs = legsOf(stops, line.closed && stops.length > 2, line);
  const last = legs.at(-1);
  const length = inches(last === undefined ? 0 : last.from + last.length);
  return { id, line, stops, legs, doubled, length };
};

/** Whether a chain comes back to its first stop. */
export const isLoop = (chain: Chain): boolean =>
  chain.stops.length > 2 && chain.legs.length === chain.stops.length;
