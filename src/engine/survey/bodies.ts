import { boundsOf } from '../../geometry/bounds.ts';
import { distance } from '../../geometry/distance.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { MarkId } from '../../site/ids.ts';
import { marksObserved } from '../../site/marksObserved.ts';
import type { Network } from './networks.ts';
import { strengthOf, type Strength } from './strength.ts';

/**
 * Who may be off by more than a foot is not held, nor, of a large network, by more than a 400th of its
 * extent: a mile of tapes end to end is no better than that. Ours, no published source.
 */
const heldWithin = (places: Places): number => {
  const box = boundsOf([...places.values()]);
  const extent = box === null ? 0 : Math.hypot(box.maxX - box.minX, box.maxY - box.minY);
  return Math.max(12, extent / 400);
};

/** Marks that what was observed holds to each other. */
export interface Body {
  readonly marks: ReadonlySet<MarkId>;
  /** Whether they are held to fixed marks as well, so that not even all together can move. */
  readonly fast: boolean;
}

type Places = ReadonlyMap<MarkId, SitePoint>;

/** The covariance when a combination of the unknowns is known as well, to a sigma of its own: a step of Kalman. */
export const knowing = (
  { covariance, size }: Pick<Strength, 'covariance' | 'size'>,
  values: Float64Array,
  sigma: number,
): Float64Array => {
  const gain = new Float64Array(size);
  for (let row = 0; row < size; row += 1) {
    let sum = 0;
    for (let n = 0; n < size; n += 1) {
      const value = values[n]!;
      if (value !== 0) sum += covariance[row * size + n]! * value;
    }
    gain[row] = sum;
  }
  const spread = values.reduce((sum, value, n) => sum + value * gain[n]!, sigma * sigma);
  const next = Float64Array.from(covariance);
  for (let row = 0; row < size; row += 1) {
    const share = gain[row]! / spread;
    if (share === 0) continue;
    for (let n = 0; n < size; n += 1) next[row * size + n]! -= share * gain[n]!;
  }
  return next;
};

/** How far a mark may be off in its worst direction, one standard deviation, inches. */
export const sigmaAt = (covariance: Float64Array, size: number, column: number): number => {
  const xx = covariance[column * size + column]!;
  const yy = covariance[(column + 1) * size + column + 1]!;
  const xy = covariance[column * size + column + 1]!;
  return Math.sqrt(Math.max(0, (xx + yy) / 2 + Math.hypot((xx - yy) / 2, xy)));
};

const heldIn = (
  places: Places,
  { columns, size }: Strength,
  covariance: Float64Array,
): ReadonlySet<MarkId> => {
  const most = heldWithin(places);
  const held = [...places.keys()].filter((id) => {
    const column = columns.get(id);
    return column === undefined || sigmaAt(covariance, size, column) < most;
  });
  return new Set(held);
};

/** The tightest that a mark is nailed down to look at the rest from it, inches. */
const nailed = 1e-3;

/** What is known when a mark is nailed down, and the way from it to another too. */
const nailedDown = (strength: Strength, places: Places, [a, b]: readonly [MarkId, MarkId]) => {
  const { columns, size } = strength;
  const [from, to] = [places.get(a), places.get(b)];
  let { covariance } = strength;
  const know = (entries: readonly (readonly [number | undefined, number])[]): void => {
    const values = new Float64Array(size);
    for (const [column, value] of entries) if (column !== undefined) values[column] = value;
    covariance = knowing({ covariance, size }, values, nailed);
  };
  const [here, there] = [columns.get(a), columns.get(b)];
  if (here !== undefined) {
    know([[here, 1]]);
    know([[here + 1, 1]]);
  }
  if (there === undefined || from === undefined || to === undefined) return covariance;
  const length = distance(from, to) || 1;
  know([
    [there, -(to.y - from.y) / length],
    [there + 1, (to.x - from.x) / length],
  ]);
  return covariance;
};

const pairsOf = ({ sightings }: Network): (readonly [MarkId, MarkId])[] =>
  sightings.flatMap(({ seen }) => {
    const marks = Object.values(marksObserved(seen));
    return marks.flatMap((a, n) => marks.slice(n + 1).map((b) => [a, b] as const));
  });

/**
 * The bodies of a network: groups of marks that cannot move to each other, to the first order, the
 * largest first. Fixes hold nothing. Two marks of a body may be of others too: those that hinge.
 */
export const bodiesOf = (network: Network, places: Places): Body[] => {
  const firm = {
    ...network,
    sightings: network.sightings.filter(({ seen }) => seen.kind !== 'fix'),
  };
  const strength = strengthOf(firm, places);
  const bodies: Body[] = [];
  if ([...network.spots.values()].some(({ fixed }) => fixed)) {
    const marks = heldIn(places, strength, strength.covariance);
    if (marks.size > 1) bodies.push({ marks, fast: true });
  }
  for (const pair of pairsOf(firm)) {
    if (bodies.some(({ marks }) => marks.has(pair[0]) && marks.has(pair[1]))) continue;
    const marks = heldIn(places, strength, nailedDown(strength, places, pair));
    if (marks.has(pair[0]) && marks.has(pair[1])) bodies.push({ marks, fast: false });
  }
  return bodies.toSorted((a, b) => Number(b.fast) - Number(a.fast) || b.marks.size - a.marks.size);
};
