import type { PaperPoint } from '../../geometry/point.ts';
import type { Primitive } from '../primitive.ts';
import { toPaper, type Projection } from '../projection.ts';

/** A sign beside a post stands clear of the smallest hole that is drawn, paper inches. */
const leastOff = 0.044;

/** Where a sign stands on the paper: on its place, or to the upper right of what is round it. */
export const signOnPaper = (
  { at, off }: Extract<Primitive, { kind: 'sign' }>,
  projection: Projection,
): PaperPoint => {
  const { x, y } = toPaper(projection, at);
  if (off === 0) return { x, y };
  const aside = Math.max(off * projection.scale, leastOff) * Math.SQRT1_2;
  return { x: x + aside, y: y - aside };
};
