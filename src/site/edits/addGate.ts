import type { Gate, Leaf } from '../gate.ts';
import { nextId, nextIds } from '../nextId.ts';
import { freshOrders } from '../pathOrder.ts';
import type { Site } from '../site.ts';
import { withGate } from '../withGate.ts';

/** A gate to be added: its leaves in a row, the one nearer to the leg's start first. */
export interface NewGate extends Omit<Gate, 'leaves'> {
  readonly leaves: readonly Omit<Leaf, 'order'>[];
}

/**
 * Adds a gate under `nextId(site, 'gate')`. RangeError for a line, leg, hinge or latch that is not
 * there, for other than one leaf or two, and for a width of zero or less. Whether it fits its leg
 * is not asked.
 */
export const addGate = (site: Site, gate: NewGate): Site => {
  const ids = nextIds(site, 'leaf', gate.leaves.length);
  const orders = freshOrders(gate.leaves.length);
  const leaves = Object.fromEntries(
    gate.leaves.map((leaf, n) => [ids[n] ?? '', { ...leaf, order: orders[n] ?? '' }]),
  );
  return withGate(site, nextId(site, 'gate'), { ...gate, leaves });
};
