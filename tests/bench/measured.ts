import type { Figure, Times } from './row.ts';

/** Work that is timed; what it returns is kept from being dropped unused. */
type Work = () => unknown;

interface How {
  /** Rounds that count, of which half begin with the reference. */
  readonly rounds: number;
  /** Rounds before, that do not. */
  readonly warm?: number;
  /** Of each work so many calls are timed as one, for what is too short for the clock. */
  readonly calls?: { readonly ours: number; readonly theirs: number };
  readonly note?: string;
}

let held: unknown;

const timed = (work: Work, calls: number): number => {
  const begun = performance.now();
  for (let call = 0; call < calls; call += 1) held = work();
  return (performance.now() - begun) / calls;
};

/** The value that a share of all are not over: 0.5 for the median. NaN of none. */
export const quantile = (all: readonly number[], share: number): number => {
  const sorted = all.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
};

export const timesOf = (all: readonly number[]): Times => ({
  median: quantile(all, 0.5),
  p95: quantile(all, 0.95),
});

/** A figure of times that were taken in both orders: each pair is the project's time and the reference's. */
export const figureOf = (
  pairs: Record<'oursFirst' | 'theirsFirst', readonly (readonly [ours: number, theirs: number])[]>,
  note = '',
): Figure => {
  const ratio = (some: readonly (readonly [number, number])[]): number =>
    quantile(
      some.map(([ours]) => ours),
      0.5,
    ) /
    quantile(
      some.map(([, theirs]) => theirs),
      0.5,
    );
  const all = [...pairs.oursFirst, ...pairs.theirsFirst];
  return {
    ratio: ratio(all),
    orders: [ratio(pairs.oursFirst), ratio(pairs.theirsFirst)],
    ours: timesOf(all.map(([ours]) => ours)),
    theirs: timesOf(all.map(([, theirs]) => theirs)),
    note,
  };
};

/**
 * Times two pieces of work against each other in one process, round by round in both orders, after some
 * rounds that warm both up.
 */
export const measured = (
  ours: Work,
  theirs: Work,
  { rounds, warm = 2, calls = { ours: 1, theirs: 1 }, note = '' }: How,
): Figure => {
  const pairs = { oursFirst: [] as [number, number][], theirsFirst: [] as [number, number][] };
  for (let round = -warm; round < rounds; round += 1) {
    const first = round % 2 === 0 ? 'oursFirst' : 'theirsFirst';
    const before = first === 'oursFirst' ? timed(ours, calls.ours) : null;
    const reference = timed(theirs, calls.theirs);
    const own = before ?? timed(ours, calls.ours);
    if (round >= 0) pairs[first].push([own, reference]);
  }
  if (held === pairs) throw new Error('expected work that returns something of its own');
  return figureOf(pairs, note);
};
