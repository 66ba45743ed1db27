import { composed } from './composed.ts';
import { distance } from './distance.ts';
import { projected, type Projective } from './projective.ts';
import { similarityOf } from './similarityOf.ts';
import type { Tie } from './tie.ts';

/** A share of how far the points lie apart by which each may be off. */
const close = 1e-6;

/**
 * The turn, scale and move of the ground that brings the places of some ties to those of others of the
 * same points of a picture; null where the points are others, or where no such motion brings them there.
 */
export const carried = (then: readonly Tie[], now: readonly Tie[]): Projective | null => {
  const same = then.length === now.length;
  if (!same || then.some(({ u, v }, n) => u !== now[n]?.u || v !== now[n]?.v)) return null;
  const [first, ...others] = then.map((was, n) => ({ was, is: now[n] ?? was }));
  if (first === undefined) return null;
  const [far] = others.toSorted((a, b) => distance(b.was, first.was) - distance(a.was, first.was));
  if (far === undefined) return null;
  // a similarity as of a picture: its y turned over, and back before it
  const over = ({ was, is }: typeof first): Tie => ({ u: was.x, v: -was.y, x: is.x, y: is.y });
  const motion = composed(similarityOf(over(first), over(far)), [1, 0, 0, 0, -1, 0, 0, 0, 1]);
  const reach = distance(first.is, far.is) * close;
  const fits = others.every(({ was, is }) => {
    const { x, y } = projected(motion, { x: was.x, y: was.y });
    return distance({ x, y }, { x: is.x, y: is.y }) <= reach;
  });
  return fits ? motion : null;
};
