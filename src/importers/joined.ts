import { firstOnSpot } from '../geometry/firstOnSpot.ts';
import type { FoundPath } from '../site/found.ts';

/** The same path run the other way. */
const turned = ({ points, bows, ...rest }: FoundPath): FoundPath => ({
  ...rest,
  points: points.toReversed(),
  // the leg behind a corner is the one before it now, seen from its other side
  bows: [
    ...bows
      .slice(0, -1)
      .toReversed()
      .map((bow) => 0 - bow),
    0,
  ],
});

/** Which ends of which paths lie on a spot: index of the path, and whether it is its start. */
type Ends = ReadonlyMap<number, readonly { readonly path: number; readonly start: boolean }[]>;

interface Spots {
  readonly from: readonly number[];
  readonly to: readonly number[];
  readonly ends: Ends;
}

const spotsOf = (paths: readonly FoundPath[]): Spots => {
  const ends = paths.flatMap(({ points }) => {
    const [first, last] = [points[0], points.at(-1)];
    return first === undefined || last === undefined ? [] : [first, last];
  });
  const spots = firstOnSpot(ends);
  const from = paths.map((_, n) => spots[2 * n] ?? -1);
  const to = paths.map((_, n) => spots[2 * n + 1] ?? -1);
  const map = new Map<number, { path: number; start: boolean }[]>();
  const add = (spot: number, path: number, start: boolean) => {
    const known = map.get(spot);
    if (known === undefined) map.set(spot, [{ path, start }]);
    else known.push({ path, start });
  };
  from.forEach((spot, n) => add(spot, n, true));
  to.forEach((spot, n) => add(spot, n, false));
  return { from, to, ends: map };
};

const keyOf = ({ points, bows }: FoundPath, from: number, to: number): string | null =>
  points.length === 2 && bows[0] === 0 ? (from < to ? `${from} ${to}` : `${to} ${from}`) : null;

/** Straight lines without those that lie on an earlier one, end on end. */
const drawnOnce = (paths: readonly FoundPath[]): readonly FoundPath[] => {
  const { from, to } = spotsOf(paths);
  const seen = new Set<string>();
  return paths.filter((path, n) => {
    const key = keyOf(path, from[n] ?? -1, to[n] ?? -1);
    if (key === null) return true;
    const again = seen.has(key);
    seen.add(key);
    return !again;
  });
};

/** The paths that follow one from an end, each the way it is run, until an end where not two meet. */
const follow = (paths: readonly FoundPath[], spots: Spots, used: Set<number>, at: number) => {
  const chain: FoundPath[] = [];
  let [end, last] = [at, -1];
  for (;;) {
    const meet = spots.ends.get(end) ?? [];
    const next = meet.length === 2 ? meet.find(({ path }) => !used.has(path)) : undefined;
    if (next === undefined) return { chain, end, last };
    used.add(next.path);
    const path = paths[next.path];
    if (path !== undefined) chain.push(next.start ? path : turned(path));
    last = next.path;
    end = (next.start ? spots.to : spots.from)[next.path] ?? -1;
  }
};

const inOne = (chain: readonly FoundPath[], closed: boolean): FoundPath => {
  const points = chain.flatMap(({ points: own }, n) => (n === 0 ? own : own.slice(1)));
  const bows = chain.flatMap(({ bows: own }) => own.slice(0, -1));
  return {
    name: chain.find(({ name }) => name !== '')?.name ?? '',
    points: closed ? points.slice(0, -1) : points,
    bows: closed ? bows : [...bows, 0],
    closed,
  };
};

/**
 * Open paths joined end to end where two ends and no more lie on one spot (1/64 in); closed where the
 * last end meets the first. A straight line that was drawn twice counts once.
 */
export const joined = (all: readonly FoundPath[]): readonly FoundPath[] => {
  const paths = drawnOnce(all);
  const spots = spotsOf(paths);
  const used = new Set<number>();
  return paths.flatMap((path, n) => {
    if (used.has(n)) return [];
    used.add(n);
    const [from, to] = [spots.from[n] ?? -1, spots.to[n] ?? -1];
    if (from === to) return [path];
    const ahead = follow(paths, spots, used, to);
    if (ahead.end === from && ahead.chain.length > 0 && (spots.ends.get(from)?.length ?? 0) === 2) {
      return [inOne([path, ...ahead.chain], true)];
    }
    const behind = follow(paths, spots, used, from);
    return [inOne([...behind.chain.toReversed().map(turned), path, ...ahead.chain], false)];
  });
};
