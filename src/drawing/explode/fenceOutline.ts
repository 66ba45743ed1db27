import type { Bounds } from '../../geometry/bounds.ts';
import { bearing } from '../../geometry/bearing.ts';
import { distance } from '../../geometry/distance.ts';
import { lerp } from '../../geometry/lerp.ts';
import { moved } from '../../geometry/moved.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import type { Infill } from '../../site/infill.ts';
import { radians } from '../../units/radians.ts';
import { clippedShares } from './clippedSegment.ts';
import { segmentsOutline } from './polylineOutline.ts';
import type { Outline } from '../outline.ts';

/**
 * Wire fence as road and site drawings draw it: long dashes with an x between (drafting practice,
 * from memory); boards have two bars there and panels a box, ours. From one sign to the next, half the height of a sign, and the gap round it; paper inches.
 */
const period = 0.42;
const arm = 0.035;
const gap = 0.06;
/** A piece that runs far beyond any window has no more than this many. */
const most = 4000;

/** What the fence is, and the part of the paper that its signs are worked out for; null for all. */
export interface FenceLook {
  readonly of: Infill['kind'];
  readonly window: Bounds | null;
}

const crossAt = (at: PaperPoint, along: number) =>
  [1, 3].map(
    (eighth) =>
      [
        moved(at, radians(along + (eighth * Math.PI) / 4), arm),
        moved(at, radians(along + (eighth * Math.PI) / 4), -arm),
      ] as const,
  );

/** Two bars across the fence, a board's width apart. */
const barsAt = (at: PaperPoint, along: number) =>
  [-0.018, 0.018].map((off) => {
    const middle = moved(at, radians(along), off);
    const across = radians(along + Math.PI / 2);
    return [moved(middle, across, arm), moved(middle, across, -arm)] as const;
  });

/** A box with two sides along the fence. */
const boxAt = (at: PaperPoint, along: number) => {
  const corners = [1, 3, 5, 7].map((eighth) =>
    moved(at, radians(along + (eighth * Math.PI) / 4), arm),
  );
  return corners.map((corner, n) => [corner, corners[(n + 1) % 4] ?? corner] as const);
};

const signAt = { 'chain link': crossAt, boards: barsAt, panels: boxAt } as const satisfies Readonly<
  Record<Infill['kind'], unknown>
>;

/** An x in a piece shorter than this would leave no dash beside it, paper inches. */
const leastWithCross = 2.5 * gap;

/** How many x a piece has by itself. */
const crossesIn = (length: number): number => Math.min(most, Math.floor(length / period));

/** One straight piece with so many x: the same number of dashes either way it is drawn. */
const piece = (
  [a, b]: readonly [PaperPoint, PaperPoint],
  { count, window, of }: { readonly count: number } & FenceLook,
): Outline => {
  const length = distance(a, b);
  const shares = clippedShares(a, b, window);
  if (length === 0 || shares === null) return [];
  if (count === 0) return segmentsOutline([[a, b]]);
  const at = (along: number): PaperPoint => lerp(a, b, along / length);
  const step = length / count;
  const first = Math.max(0, Math.floor((shares[0] * length) / step) - 1);
  const last = Math.min(count - 1, Math.ceil((shares[1] * length) / step));
  const middles = Array.from({ length: last - first + 1 }, (_, n) => (first + n + 0.5) * step);
  const ends = [first * step, (last + 1) * step] as const;
  const dashes = [ends[0], ...middles.flatMap((x) => [x - gap, x + gap]), ends[1]];
  const way = bearing(a, b);
  const lines = dashes.flatMap((from, n) => {
    const to = dashes[n + 1];
    return n % 2 === 0 && to !== undefined ? [[at(from), at(to)] as const] : [];
  });
  return segmentsOutline([...lines, ...middles.flatMap((middle) => signAt[of](at(middle), way))]);
};

/**
 * Fence through points on the paper. A piece too short for an x is a plain line; of several such in a
 * row, as on a curve, some have one in their middle, about as far apart as they always are.
 */
export const fenceOutline = (
  points: readonly PaperPoint[],
  closed: boolean,
  look: FenceLook,
): Outline => {
  const around = closed ? [...points, ...points.slice(0, 1)] : points;
  let bare = 0;
  return around.slice(1).flatMap((to, n) => {
    const from = around[n] ?? to;
    const length = distance(from, to);
    const own = crossesIn(length);
    bare = own > 0 ? 0 : bare + length;
    const one = own === 0 && bare >= period && length >= leastWithCross;
    if (one) bare = 0;
    return piece([from, to], { ...look, count: one ? 1 : own });
  });
};
