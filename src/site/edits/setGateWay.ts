import { entry } from '../entry.ts';
import type { Gate, Leaf } from '../gate.ts';
import type { GateWay } from '../gateWay.ts';
import type { GateId, HardwareId, LeafId } from '../ids.ts';
import { inOrder } from '../pathOrder.ts';
import type { Site } from '../site.ts';
import { withGate } from '../withGate.ts';
import { leafCounts } from '../gateWay.ts';

/** The hinge and latch that a gate takes when it gets leaves that have none. */
export interface WayParts {
  readonly hinge: HardwareId;
  readonly latch: HardwareId;
}

const hungOn = (leaves: Gate['leaves'], hinge: (leaf: Leaf) => HardwareId | null): Gate['leaves'] =>
  Object.fromEntries(
    inOrder<LeafId, Leaf>(leaves).map(({ id, ...leaf }) => [id, { ...leaf, hinge: hinge(leaf) }]),
  );

/**
 * Lets a gate close its opening in another way. Leaves that roll lose their hinges, leaves that
 * turn get `hinge` where they have none, a gap loses leaves and latch. RangeError for an unknown
 * gate or part, and where the gate has another number of leaves than the way can have: give it
 * those first.
 */
export const setGateWay = (site: Site, id: GateId, way: GateWay, parts: WayParts): Site => {
  const gate = entry(site, 'gates', id);
  if (way.kind === 'gap')
    return withGate(site, id, {
      ...gate,
      way,
      leaves: {},
      latch: null,
      receiver: null,
      asSet: null,
    });
  const rolls = way.kind === 'cantilever';
  const leaves = hungOn(gate.leaves, ({ hinge }) => (rolls ? null : (hinge ?? parts.hinge)));
  const receiver =
    way.kind === 'swing' && leafCounts.swing.includes(Object.keys(leaves).length)
      ? gate.receiver
      : null;
  return withGate(site, id, { ...gate, way, leaves, latch: gate.latch ?? parts.latch, receiver });
};
