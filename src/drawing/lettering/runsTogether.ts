import type { Primitive } from '../primitive.ts';
import type { Projection } from '../projection.ts';

/** Room for a text of a row, in ems: three figures wide and one line high, clear of the next. */
const inRow = { wide: 2.2, high: 1.1 } as const;

/** True where the next of a row of texts lies too near for both to be read. */
export const runsTogether = (
  { apart, size }: Extract<Primitive, { kind: 'text' }>,
  { scale }: Projection,
): boolean =>
  apart !== undefined &&
  Math.abs(apart.x) * scale < inRow.wide * size &&
  Math.abs(apart.y) * scale < inRow.high * size;
