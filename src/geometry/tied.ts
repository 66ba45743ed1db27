import type { Point } from './point.ts';
import type { Segment } from './segment.ts';

/**
 * The point where two tapes meet, or why there is none, with by how much, in the unit of the space:
 * `short`, the two together do not reach from end to end; `long`, the tape that is named reaches past
 * all places where the other could meet it; `no base`, the ends are on one spot, from where two tapes
 * say nothing of the way.
 */
export type Tied<Space extends string> =
  | { readonly kind: 'met'; readonly at: Point<Space> }
  | { readonly kind: 'short'; readonly by: number }
  | { readonly kind: 'long'; readonly tape: 'start' | 'end'; readonly by: number }
  | { readonly kind: 'no base' };

/** Two tapes pulled to one point, by where they are hooked, and on which side of the base that lies. */
export interface Tapes {
  readonly start: number;
  readonly end: number;
  /** Of the way from the start of the base to its end. */
  readonly side: 'left' | 'right';
}

/** What two tapes miss one another by, as a share of all three lengths, that is no more than rounding. */
const rounding = 4 * Number.EPSILON;

/**
 * The point at two distances from the ends of a base, on one side of the way from its start to its
 * end: a two-tape tie. Where both tapes lie along the base there is one point, on it. Lengths are
 * zero or more.
 */
export const tied = <Space extends string>(
  { start, end }: Segment<Space>,
  tapes: Tapes,
): Tied<Space> => {
  const [x, y] = [end.x - start.x, end.y - start.y];
  const base = Math.hypot(x, y);
  if (base === 0) return { kind: 'no base' };
  const short = base - tapes.start - tapes.end;
  const past = Math.abs(tapes.start - tapes.end) - base;
  const rounded = rounding * (base + tapes.start + tapes.end);
  if (short > rounded) return { kind: 'short', by: short };
  if (past > rounded)
    return { kind: 'long', tape: tapes.start > tapes.end ? 'start' : 'end', by: past };
  const [sum, apart] = [tapes.start + tapes.end, Math.abs(tapes.start - tapes.end)];
  const along = (base + ((tapes.start - tapes.end) * sum) / base) / 2;
  // Heron's formula for the height of the triangle, each factor zero or more
  const off =
    Math.sqrt(Math.max(0, -short) * Math.max(0, -past) * (sum + base) * (base + apart)) /
    (2 * base);
  const left = tapes.side === 'left' ? off : -off;
  return {
    kind: 'met',
    at: {
      x: start.x + (along * x - left * y) / base,
      y: start.y + (along * y + left * x) / base,
    },
  };
};
