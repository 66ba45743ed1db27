import { boundsOverlap, unionOfBounds } from './bounds.ts';
import type { Bounds } from './bounds.ts';

/** So many boxes are held by one of the level above. */
const fan = 16;

/** Things by where they are: boxes in groups, and the groups in larger ones, up to one that holds all. */
export interface BoundsIndex<T> {
  readonly items: readonly T[];
  /** The places of the items in their list, neighbours on the ground beside each other. */
  readonly order: readonly number[];
  /** The bounds of the items in that order, then of each 16 of them, and so on up to one; none for no items. */
  readonly levels: readonly (readonly Bounds[])[];
}

interface Placed {
  readonly n: number;
  readonly box: Bounds;
}

/** Bounds of which one edge is no number are nowhere. */
const isPlace = ({ minX, minY, maxX, maxY }: Bounds): boolean => minX <= maxX && minY <= maxY;

const byX = (a: Placed, b: Placed): number => a.box.minX + a.box.maxX - b.box.minX - b.box.maxX;
const byY = (a: Placed, b: Placed): number => a.box.minY + a.box.maxY - b.box.minY - b.box.maxY;

const groupsOf = <T>(all: readonly T[], size: number): T[][] =>
  Array.from({ length: Math.ceil(all.length / size) }, (_, n) =>
    all.slice(n * size, (n + 1) * size),
  );

/** Strips from west to east, each from south to north: about as many strips as groups in one. */
const inStrips = (placed: readonly Placed[]): Placed[] => {
  const strips = Math.max(1, Math.ceil(Math.sqrt(placed.length / fan)));
  const size = Math.max(1, Math.ceil(placed.length / strips / fan)) * fan;
  return groupsOf(placed.toSorted(byX), size).flatMap((strip) => strip.toSorted(byY));
};

/** Lays out things by their bounds, once; what has none is nowhere. In the unit of the space. */
export const boundsIndex = <T>(
  items: readonly T[],
  boundsOf: (item: T) => Bounds | null,
): BoundsIndex<T> => {
  const placed = inStrips(
    items.flatMap((item, n): Placed[] => {
      const box = boundsOf(item);
      return box !== null && isPlace(box) ? [{ n, box }] : [];
    }),
  );
  const levels: Bounds[][] = [];
  let level = placed.map(({ box }) => box);
  while (level.length > 0) {
    levels.push(level);
    if (level.length === 1) break;
    level = groupsOf(level, fan).map((group) => group.reduce(unionOfBounds));
  }
  return { items, order: placed.map(({ n }) => n), levels };
};

/** The bounds of all things of an index; null for none. */
export const wholeOf = ({ levels }: BoundsIndex<unknown>): Bounds | null =>
  levels.at(-1)?.[0] ?? null;

/** The places of the boxes that share a point with another, of the groups that begin at some places. */
const metIn = (boxes: readonly Bounds[], from: readonly number[], box: Bounds): number[] => {
  const met: number[] = [];
  for (const first of from) {
    const past = Math.min(boxes.length, first + fan);
    for (let n = first; n < past; n += 1) {
      const own = boxes[n];
      if (own !== undefined && boundsOverlap(own, box)) met.push(n);
    }
  }
  return met;
};

/** The things whose bounds share a point with a box, edges included, in the order of their list. */
export const foundIn = <T>({ items, order, levels }: BoundsIndex<T>, box: Bounds): T[] => {
  let met = [0];
  for (let depth = levels.length - 1; depth >= 0; depth -= 1) {
    const groups = depth === levels.length - 1 ? met : met.map((n) => n * fan);
    met = metIn(levels[depth] ?? [], groups, box);
  }
  if (levels.length === 0) return [];
  // every place is one of the list: what was laid out came from it
  return met
    .map((n) => order[n] ?? 0)
    .sort((a, b) => a - b)
    .map((n) => items[n] as T);
};
