import { entry } from '../entry.ts';
import type { Gate, Leaf } from '../gate.ts';
import type { GateId, LeafId } from '../ids.ts';
import { nextId } from '../nextId.ts';
import { inOrder, orderBetween } from '../pathOrder.ts';
import { quoted } from '../quoted.ts';
import type { Site } from '../site.ts';
import { withGate } from '../withGate.ts';

/**
 * Gives a gate one leaf or two. The leaf at the hinged end stays; a second one comes beside it
 * with the same hinge and the width copied, which is flagged until it is measured. RangeError for
 * an unknown gate and another number of leaves.
 */
export const setGateLeaves = (site: Site, id: GateId, count: 1 | 2): Site => {
  const gate = entry(site, 'gates', id);
  const sorted = inOrder<LeafId, Leaf>(gate.leaves);
  const stays = sorted.at(gate.hingedAt === 'start' ? 0 : -1);
  if ((count !== 1 && count !== 2) || stays === undefined) {
    throw new RangeError(
      `gates › ${id} › leaves: expected one leaf or two, found ${quoted(count)}`,
    );
  }
  if (count === sorted.length) return site;
  const { id: leafId, ...leaf } = stays;
  const one = { [leafId]: leaf };
  if (count === 1) return withGate(site, id, { ...gate, leaves: one });
  const second = { ...leaf, from: 'copied', order: orderBeside(gate, leaf) } as const;
  return withGate(site, id, { ...gate, leaves: { ...one, [nextId(site, 'leaf')]: second } });
};

/** A key on the latch side of the leaf that stays. */
const orderBeside = ({ hingedAt }: Gate, { order }: Leaf): string =>
  hingedAt === 'start' ? orderBetween(order, null) : orderBetween(null, order);
