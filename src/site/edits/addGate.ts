import type { Gate, Leaf } from '../gate.ts';
import { nextId, nextIds } from '../nextId.ts';
import { freshOrders } from '../pathOrder.ts';
import type { Site } from '../site.ts';
import { untoldGate, untoldLeaf } from '../untold.ts';
import { withGate } from '../withGate.ts';

type Untold<Whole, Known extends keyof Whole> = Pick<Whole, Known> & Partial<Whole>;

/** A leaf to be added: what is not said of it is untold. */
export type NewLeaf = Omit<Untold<Leaf, 'widths' | 'from' | 'hinge'>, 'order'>;

/** A gate to be added: its leaves in a row, the one nearer to the leg's start first. */
export interface NewGate extends Omit<
  Untold<Gate, 'label' | 'line' | 'leg' | 'anchor' | 'latch' | 'opens' | 'hingedAt'>,
  'leaves'
> {
  readonly leaves: readonly NewLeaf[];
}

/**
 * Adds a gate under `nextId(site, 'gate')`. RangeError for a line, leg, hinge or latch that is not
 * there, for another number of leaves than its way has, and for a width of zero or less. Whether
 * it fits its leg is not asked.
 */
export const addGate = (site: Site, gate: NewGate): Site => {
  const ids = nextIds(site, 'leaf', gate.leaves.length);
  const orders = freshOrders(gate.leaves.length);
  const leaves = Object.fromEntries(
    gate.leaves.map((leaf, n) => [
      ids[n] ?? '',
      { ...untoldLeaf, ...leaf, order: orders[n] ?? '' },
    ]),
  );
  return withGate(site, nextId(site, 'gate'), { ...untoldGate, ...gate, leaves });
};
