import { slack } from '../../geometry/tolerance.ts';
import type { Closed } from './spaceOut.ts';

/**
 * Equal bays between two places of a stretch: its ends, and those where a post can lean on closed
 * ground. Places are told by their number in the order in which they come.
 */
interface Part {
  readonly from: number;
  readonly to: number;
  readonly bays: number;
  readonly bay: number;
}

/** The least cost of reaching a place with so many bays, and the part that it was reached by. */
interface Reached {
  readonly cost: number;
  readonly by: Part | null;
}

/** What two numbers of bays may differ by from rounding alone. */
const hair = 1e-9;

/** The farthest that one bay, two bays and so on can reach; the last one reaches the end. */
const reaches = (length: number, max: number, closed: readonly Closed[]): number[] => {
  const farthest = [0];
  for (let at = 0; at < length;) {
    const reach = at + max;
    const next = closed.find(({ from, to }) => from < reach && reach < to)?.from ?? reach;
    if (next <= at) return farthest;
    farthest.push(next);
    at = next;
  }
  return farthest;
};

/** With how many bays at least each place is reached from the start. */
const leastBays = (places: readonly number[], farthest: readonly number[]): number[] => {
  let count = 0;
  return places.map((at) => {
    while (count < farthest.length && (farthest[count] ?? 0) < at - slack) count += 1;
    return count;
  });
};

/** Whether equal bays from a place on put no post on closed ground; touching its end is outside. */
const clears = (
  { start, bay, bays }: { start: number; bay: number; bays: number },
  closed: readonly Closed[],
): boolean =>
  closed.every(({ from, to }) => {
    const next = Math.max(1, Math.floor((from - start) / bay + hair) + 1);
    return next >= bays || start + next * bay >= to - hair * bay;
  });

/** Every part that some way of so many bays can go, none over `max`. */
const partsOf = (
  places: readonly number[],
  total: number,
  max: number,
  closed: readonly Closed[],
): Part[] => {
  const length = places.at(-1) ?? 0;
  const turned = closed.map(({ from, to }) => ({ from: length - to, to: length - from }));
  const least = leastBays(places, reaches(length, max, closed));
  const left = places.map((at) => length - at).toReversed();
  const most = leastBays(left, reaches(length, max, turned.toReversed()))
    .map((bays) => total - bays)
    .toReversed();
  const between = (a: number, b: number, start: number, end: number): Part[] => {
    const bays = Math.max(
      Math.ceil((end - start) / max - hair),
      (least[b] ?? 0) - (most[a] ?? total),
      1,
    );
    const count = (most[b] ?? total) - (least[a] ?? 0) - bays + 1;
    const crossed = closed.filter(({ from, to }) => from < end && to > start);
    return Array.from({ length: Math.max(0, count) }, (_, n): Part => {
      return { from: a, to: b, bays: bays + n, bay: (end - start) / (bays + n) };
    }).filter((part) => clears({ start, ...part }, crossed));
  };
  return places.flatMap((start, a) =>
    places.slice(a + 1).flatMap((end, n) => between(a, a + 1 + n, start, end)),
  );
};

/** The cheapest way over parts from the first place to the last in so many bays; empty for none. */
const cheapest = (
  parts: readonly Part[],
  last: number,
  total: number,
  costOf: (before: number, part: Part) => number,
): Part[] => {
  const reached: Map<number, Reached>[] = Array.from({ length: last + 1 }, () => new Map());
  reached[0]?.set(0, { cost: 0, by: null });
  // parts come in the order of where they begin, so that what leads up to one is known
  for (const part of parts) {
    for (const [count, { cost }] of reached[part.from] ?? []) {
      const [bays, next] = [count + part.bays, costOf(cost, part)];
      const known = reached[part.to]?.get(bays);
      // of two that cost the same the first counts, however they were rounded
      if (bays > total || (known !== undefined && known.cost <= next * (1 + hair))) continue;
      reached[part.to]?.set(bays, { cost: next, by: part });
    }
  }
  const way: Part[] = [];
  for (let [place, count] = [last, total]; ;) {
    const by = reached[place]?.get(count)?.by ?? null;
    if (by === null) return way.toReversed();
    way.push(by);
    [place, count] = [by.from, count - by.bays];
  }
};

/**
 * Where posts stand in a stretch of `length` inches cut into `total` bays, none over `max`, in
 * ground of which some is closed (in order, no two pieces overlapping): with the smallest largest
 * bay, then the least sum of squares of the bays. Exact: between two posts that lean on closed
 * ground bays of the best way are equal, as a string pulled taut round it is straight, so that the
 * best way is the cheapest one over the ends of closed ground. Rising; empty where there is no way.
 */
export const evenPath = (
  length: number,
  total: number,
  max: number,
  closed: readonly Closed[],
): number[] => {
  const ends = closed.flatMap(({ from, to }) => [from, to]);
  const inside = ends.filter((at) => at > 0 && at < length);
  const places = [...new Set([0, ...inside, length])].toSorted((a, b) => a - b);
  const parts = partsOf(places, total, max, closed);
  const last = places.length - 1;
  const tight = cheapest(parts, last, total, (before, { bay }) => Math.max(before, bay));
  const largest = Math.max(...tight.map(({ bay }) => bay)) * (1 + hair);
  const even = cheapest(
    parts.filter(({ bay }) => bay <= largest),
    last,
    total,
    (before, { bay, bays }) => before + bays * bay * bay,
  );
  return even.flatMap(({ from, bay, bays }, n) => {
    const start = places[from] ?? 0;
    const own = Array.from({ length: bays - 1 }, (_, k) => start + (k + 1) * bay);
    return n === 0 ? own : [start, ...own];
  });
};
