import { slack } from '../../geometry/tolerance.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { equalBays } from './equalBays.ts';
import { evenPath } from './evenPath.ts';

/** Ground along a stretch in which no post may stand, its two ends excepted; inches from its start. */
export interface Closed {
  readonly from: number;
  readonly to: number;
}

/** Closed ground too long for one bay: from where to where it reaches, and by how much, inches. */
export interface TooLong extends Closed {
  readonly missing: Inches;
}

/** Where line posts stand between the two posts of a stretch. */
export interface Spacing {
  /** Rising, in inches from the start; the two ends are not among them. */
  readonly stations: readonly number[];
  /** Bays that are longer than the maximum since the ground between is closed. */
  readonly tooLong: readonly TooLong[];
}

/** A bay may be a billionth over the maximum: a sum of its parts may be off by rounding. */
const rounding = 1 + 1e-9;

/** Closed ground in order, within the stretch, pieces that overlap made one. */
const merged = (closed: readonly Closed[], length: number): Closed[] => {
  const pieces: Closed[] = [];
  const inside = closed
    .map(({ from, to }) => ({ from: Math.max(0, from), to: Math.min(length, to) }))
    .filter(({ from, to }) => from < to)
    .toSorted((a, b) => a.from - b.from);
  for (const piece of inside) {
    const last = pieces.at(-1);
    // two that touch are one: a keep-out goes on past the mark where one leg ends and the next begins
    if (last === undefined || piece.from > last.to + slack) pieces.push(piece);
    else pieces.splice(-1, 1, { from: last.from, to: Math.max(last.to, piece.to) });
  }
  return pieces;
};

/** The last place not after `reach` where a post may stand; below it, where closed ground begins. */
const lastOpen = (closed: readonly Closed[], reach: number): number =>
  closed.find(({ from, to }) => from < reach && reach < to)?.from ?? reach;

/** The fewest bays, none over `max`; or the closed ground that no bay can cross. */
const fewest = (length: number, max: number, closed: readonly Closed[]): number | Closed => {
  let [at, bays] = [0, 1];
  while (length - at > max * rounding) {
    const next = lastOpen(closed, at + max * rounding);
    if (next <= at) return { from: at, to: closed.find(({ to }) => to > at)?.to ?? length };
    at = next;
    bays += 1;
  }
  return bays;
};

/** A stretch on either side of ground that cannot be crossed, put together again. */
const parted = (length: number, max: Inches, closed: readonly Closed[], over: Closed): Spacing => {
  const before = spaceOut(inches(over.from), max, closed);
  const behind = spaceOut(
    inches(length - over.to),
    max,
    closed.map(({ from, to }) => ({ from: from - over.to, to: to - over.to })),
  );
  const ends = [over.from, over.to].filter((at) => at > 0 && at < length);
  return {
    stations: [...before.stations, ...ends, ...behind.stations.map((at) => at + over.to)],
    tooLong: [
      ...before.tooLong,
      { ...over, missing: inches(over.to - over.from - max) },
      ...behind.tooLong.map((next) => ({
        ...next,
        from: next.from + over.to,
        to: next.to + over.to,
      })),
    ],
  };
};

/**
 * Line posts of a stretch of `length` inches, in ground of which some is closed: the fewest posts,
 * with them the smallest largest bay, and with that the bays most even (the least sum of their
 * squares). No bay is over `max` (inches, above zero, else RangeError) but one across closed ground
 * that is longer itself, which is told. Without closed ground the bays are equal (ASTM F567-07
 * 4.1). The posts at the two ends stand whatever the ground is.
 */
export const spaceOut = (length: Inches, max: Inches, closed: readonly Closed[]): Spacing => {
  const equal = equalBays(length, max);
  const even = Array.from({ length: equal.count - 1 }, (_, n) => (n + 1) * equal.length);
  const pieces = merged(closed, length);
  const hit = even.some((at) => pieces.some(({ from, to }) => from < at && at < to));
  if (!hit && (pieces.length === 0 || fewest(length, max, pieces) === equal.count)) {
    return { stations: even, tooLong: [] };
  }
  const bays = fewest(length, max, pieces);
  return typeof bays === 'number'
    ? { stations: evenPath(length, bays, max * rounding, pieces), tooLong: [] }
    : parted(length, max, pieces, bays);
};
