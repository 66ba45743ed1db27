import { inches } from '../units/inches.ts';
import type { Anchor } from './anchor.ts';
import type { AsSet } from './asSet.ts';
import type { Gate } from './gate.ts';
import type { GateWay } from './gateWay.ts';
import type { LeafId, VertexId } from './ids.ts';
import { inOrder } from './pathOrder.ts';

const otherEnd = { start: 'end', end: 'start' } as const;
const otherSide = { left: 'right', right: 'left' } as const;

/** An anchor told from the other end of its leg. */
export const flippedAnchor = ({ from, offset }: Anchor): Anchor =>
  from === 'middle' ? { from, offset: inches(0 - offset) } : { from: otherEnd[from], offset };

/** The same leaves with their order keys dealt out from the other end. */
const flippedLeaves = (leaves: Gate['leaves']): Gate['leaves'] => {
  const sorted = inOrder<LeafId, Gate['leaves'][LeafId]>(leaves);
  return Object.fromEntries(
    sorted.map(({ id, ...leaf }, n) => [id, { ...leaf, order: sorted.at(-1 - n)?.order ?? '' }]),
  );
};

const flippedWay = (way: GateWay): GateWay =>
  way.kind === 'cantilever' ? { ...way, stores: otherEnd[way.stores] } : way;

const flippedAsSet = (asSet: AsSet): AsSet => ({
  ...asSet,
  leans: { start: asSet.leans.end, end: asSet.leans.start },
});

/**
 * A gate told from the other end of its leg, which is filed under `leg` when it runs the other
 * way: the same gate in the same place on the ground.
 */
export const flippedGate = (gate: Gate, leg: VertexId): Gate => ({
  ...gate,
  leg,
  anchor: flippedAnchor(gate.anchor),
  leaves: flippedLeaves(gate.leaves),
  opens: otherSide[gate.opens],
  hingedAt: otherEnd[gate.hingedAt],
  way: flippedWay(gate.way),
  asSet: gate.asSet === null ? null : flippedAsSet(gate.asSet),
});
