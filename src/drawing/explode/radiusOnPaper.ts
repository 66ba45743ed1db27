import type { Primitive } from '../primitive.ts';
import type { Projection } from '../projection.ts';

type Circle = Extract<Primitive, { kind: 'circle' }>;

/** However near its neighbours are, a circle is drawn at least so large, paper inches. */
const dot = 0.012;

/**
 * Radius of a circle on the paper, in paper inches: its own to scale, and where that is too small
 * to be seen its least, as far as that leaves room between it and the next of its kind.
 */
export const radiusOnPaper = (
  { radius, least, apart = Infinity }: Circle,
  { scale }: Projection,
): number => Math.max(radius * scale, Math.min(least, Math.max(dot, 0.4 * apart * scale)));
