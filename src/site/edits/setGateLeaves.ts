import { entry } from '../entry.ts';
import type { Gate, Leaf } from '../gate.ts';
import type { GateId, LeafId } from '../ids.ts';
import { nextId } from '../nextId.ts';
import { freeOrder, freshOrders, inOrder } from '../pathOrder.ts';
import { quoted } from '../quoted.ts';
import type { Site } from '../site.ts';
import { withGate } from '../withGate.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * Gives a gate one leaf or two. The leaf at the hinged end stays, of leaves that roll the one at
 * the end towards which a single leaf rolls; a second one comes beside it with the same hinge and
 * the width copied, which is flagged until it is measured. RangeError for an unknown gate and for a
 * number of leaves that its way does not have.
 */
export const setGateLeaves = (site: Site, id: GateId, count: 1 | 2): Site => {
  const gate = entry(site, 'gates', id);
  const sorted = inOrder<LeafId, Leaf>(gate.leaves);
  const stays = sorted.at(keptEnd(gate) === 'start' ? 0 : -1);
  if ((count !== 1 && count !== 2) || stays === undefined) {
    throw new RangeError(
      phrase`gates › ${id} › leaves: expected one leaf or two, found ${quoted(count)}`,
    );
  }
  if (count === sorted.length) return site;
  const { id: leafId, ...leaf } = stays;
  if (count === 1) {
    const leaves = { [leafId]: leaf };
    return withGate(site, id, { ...gate, leaves, asSet: asSetOf(gate, leafId) });
  }
  const [own, other] = ordersBeside(gate, leaf.order);
  const second = { ...leaf, from: 'copied', on: '', order: other } as const;
  const leaves = { [leafId]: { ...leaf, order: own }, [nextId(site, 'leaf')]: second };
  return withGate(site, id, { ...gate, leaves });
};

/** The end of the leg at which the leaf stands that a gate of one leaf has. */
const keptEnd = ({ way, hingedAt }: Gate): Gate['hingedAt'] =>
  way.kind === 'cantilever' ? way.stores : hingedAt;

/** What the crew found, but for a leaf that is gone. */
const asSetOf = ({ asSet }: Gate, stays: LeafId): Gate['asSet'] => {
  if (asSet === null) return null;
  const only = <T>(map: Readonly<Record<LeafId, T>>): Record<LeafId, T> => {
    const own = Object.hasOwn(map, stays) ? map[stays] : undefined;
    return own === undefined ? {} : { [stays]: own };
  };
  return { ...asSet, leaves: only(asSet.leaves), hinges: only(asSet.hinges) };
};

/** The keys of the leaf that stays and of the one on its latch side; its own where there is room. */
const ordersBeside = (gate: Gate, own: string): readonly [own: string, other: string] => {
  const first = keptEnd(gate) === 'start';
  const other = first ? freeOrder(own, null) : freeOrder(null, own);
  if (other !== null) return [own, other];
  const [low = '', high = ''] = freshOrders(2);
  return first ? [low, high] : [high, low];
};
