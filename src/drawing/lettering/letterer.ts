import type { Beside, Primitive } from '../primitive.ts';
import type { Projection } from '../projection.ts';
import { letterBubble } from './letterBubble.ts';
import { letterChain } from './letterChain.ts';
import { letterText } from './letterText.ts';
import type { Lettered } from './lettered.ts';
import type { Lettering } from './lettering.ts';
import { rowOrder, rowsOf } from './rowOrder.ts';

/** Letters one primitive after the other, null for what has no letters; a row of texts settles on its side at its first. */
export const letterer = (
  primitives: readonly Primitive[],
  projection: Projection,
  room: Lettering,
): ((primitive: Primitive) => Lettered | null) => {
  const rows = rowsOf(primitives);
  const orders = new Map<Beside, readonly number[]>();
  const orderOf = (beside: Beside): readonly number[] => {
    const known = orders.get(beside);
    const order = known ?? rowOrder(rows.get(beside) ?? [], projection, room);
    orders.set(beside, order);
    return order;
  };
  return (primitive: Primitive): Lettered | null => {
    if (primitive.kind === 'text') {
      const order = primitive.beside === undefined ? [] : orderOf(primitive.beside);
      return letterText(primitive, projection, room, order);
    }
    if (primitive.kind === 'bubble') return letterBubble(primitive, projection, room);
    if (primitive.kind === 'dimension chain') return letterChain(primitive, projection, room);
    return null;
  };
};
