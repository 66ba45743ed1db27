import type { Atom } from './atom.ts';
import { drawOnPaper, type Room } from './drawOnPaper.ts';
import type { Primitive } from './primitive.ts';
import type { Projection } from './projection.ts';

/**
 * The four atoms that primitives come down to at a scale; the one place that decides where ticks
 * and letters go. Texts for which there is no room are missing: sheets use `drawOnPaper`, which
 * names them.
 */
export const explode = (
  primitives: readonly Primitive[],
  projection: Projection,
  room: Room = {},
): readonly Atom[] => drawOnPaper(primitives, projection, room).atoms;
