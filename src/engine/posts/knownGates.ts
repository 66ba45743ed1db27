import type { Gate } from '../../site/gate.ts';
import type { GateId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import type { Carry } from '../carry/carry.ts';
import { openingOf } from '../gate/openingOf.ts';
import { termsOf } from '../gate/termsOf.ts';
import { groundWidth } from '../set/groundWidth.ts';
import type { KnownGate } from './gateSlots.ts';
import { sortedEntries } from './sortedEntries.ts';

/** A gate that was set stands at the width of its posts at the ground, any other at its target. */
const knownGate = (id: GateId, gate: Gate, site: Site): KnownGate => {
  const opening = openingOf(termsOf(gate, site));
  const stands = gate.asSet === null ? opening.target : groundWidth(gate.asSet);
  return { id, gate, opening, stands };
};

/** The hardware of a site that a gate is hung with. */
const partsOf = ({ latch, leaves }: Gate, { hardware }: Site): unknown[] =>
  [latch, ...Object.values(leaves).map(({ hinge }) => hinge)].map((part) =>
    part === null ? null : hardware[part],
  );

/** The gates of a site, each with its opening, in the order of their ids. */
export const knownGates = (site: Site, carry: Carry): ReadonlyMap<GateId, KnownGate> => {
  const known = carry.shelf<KnownGate>('known gate');
  return new Map(
    sortedEntries(site.gates).map(([id, gate]: [GateId, Gate]) => {
      const from = [gate, ...partsOf(gate, site)];
      return [id, known.take(id, from, () => knownGate(id, gate, site))];
    }),
  );
};
