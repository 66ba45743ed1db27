import { inches, type Inches } from '../../units/inches.ts';
import { quoted } from '../quoted.ts';
import { entry } from '../entry.ts';
import type { Gate, Leaf } from '../gate.ts';
import { leafCounts, type GateWay } from '../gateWay.ts';
import type { GateId, HardwareId, LeafId } from '../ids.ts';
import { leafWidth } from '../leafWidth.ts';
import { nextIds } from '../nextId.ts';
import { oneWidth } from '../oneWidth.ts';
import { freshOrders, inOrder } from '../pathOrder.ts';
import type { Site } from '../site.ts';
import { untoldLeaf } from '../untold.ts';
import { withGate } from '../withGate.ts';
import { setGateLeaves } from './setGateLeaves.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The hinge and latch that a gate takes when it gets leaves that have none. */
export interface WayParts {
  readonly hinge: HardwareId;
  readonly latch: HardwareId;
}

const takenBy = (site: Site, id: HardwareId | null): number =>
  id === null ? 0 : entry(site, 'hardware', id).takes.planned;

/** What a leaf has beside the part that closes the opening, inches: below zero for its hinges. */
const beyondOpening = (site: Site, way: GateWay, hinge: HardwareId | null): number =>
  way.kind === 'cantilever' ? way.overlap + way.counterbalance : -takenBy(site, hinge);

/** The set record without what was measured on leaves and hinges that are there no more. */
const setWithoutLeaves = ({ asSet }: Gate): Gate['asSet'] =>
  asSet === null ? null : { ...asSet, leaves: {}, hinges: {} };

/** What hangs in an opening that was a gap: leaves of what its parts leave of the clear width. */
const filledGap = (site: Site, gate: Gate, way: GateWay, parts: WayParts): Gate => {
  const clear = gate.way.kind === 'gap' ? gate.way.clear : 0;
  const [count = 1] = leafCounts[way.kind];
  const hinge = way.kind === 'cantilever' ? null : parts.hinge;
  const stop = way.kind === 'centre stop' ? way.stop : 0;
  const middle = stop + takenBy(site, parts.latch) * (way.kind === 'centre stop' ? 2 : 1);
  const each = (clear - middle) / count + beyondOpening(site, way, hinge);
  if (!(each > 0)) {
    throw new RangeError(
      phrase`gap of ${quoted(clear)} in: expected more than its hinges and latch take up`,
    );
  }
  const leaf = { ...untoldLeaf, widths: oneWidth(inches(each)), from: 'catalogue', hinge } as const;
  const orders = freshOrders(count);
  const leaves = Object.fromEntries(
    nextIds(site, 'leaf', count).map((id, n) => [id, { ...leaf, order: orders[n] ?? '' }]),
  );
  return { ...gate, way, leaves, latch: parts.latch };
};

/** A leaf for the other way of closing the same opening: longer by its tail, or without it. */
const exchanged = (leaf: Leaf, from: number, to: number): Leaf => {
  const width = leafWidth(leaf) - from + to;
  const widths = width > 0 ? oneWidth(width as Inches) : leaf.widths;
  return { ...leaf, widths, from: 'catalogue', on: '' };
};

/** Leaves hung or put on rollers as the way asks; where that changes they are leaves to be ordered. */
const refitted = (site: Site, gate: Gate, way: GateWay, parts: WayParts): Gate => {
  const rolls = way.kind === 'cantilever';
  const rolled = gate.way.kind === 'cantilever';
  if (rolls === rolled) return { ...gate, way };
  const leaves = Object.fromEntries(
    inOrder<LeafId, Leaf>(gate.leaves).map(({ id, ...leaf }) => {
      const hinge = rolls ? null : (leaf.hinge ?? parts.hinge);
      const [before, after] = [
        beyondOpening(site, gate.way, leaf.hinge),
        beyondOpening(site, way, hinge),
      ];
      return [id, { ...exchanged(leaf, before, after), hinge }];
    }),
  );
  return { ...gate, way, leaves, asSet: setWithoutLeaves(gate) };
};

/**
 * Lets a gate close its opening in another way. Leaves are added beside those there until the way
 * has enough: copied, to be measured. Leaves that turn and leaves that roll are not the same
 * leaves: where one kind takes the place of the other they are of the width that keeps the opening,
 * from the catalogue. A gap loses leaves and latch; a gap that is closed gets leaves of its clear
 * width less what `parts` take up, from the catalogue. Closer, hold-open post and receiver stay on
 * record whatever the way. RangeError for an unknown gate or part, and for a gap that its parts
 * would fill.
 */
export const setGateWay = (site: Site, id: GateId, way: GateWay, parts: WayParts): Site => {
  const gate = entry(site, 'gates', id);
  if (way.kind === 'gap') {
    return withGate(site, id, {
      ...gate,
      way,
      leaves: {},
      latch: null,
      asSet: setWithoutLeaves(gate),
    });
  }
  if (gate.way.kind === 'gap') return withGate(site, id, filledGap(site, gate, way, parts));
  const enough = leafCounts[way.kind].includes(Object.keys(gate.leaves).length);
  const counted = enough ? site : setGateLeaves(site, id, leafCounts[way.kind][0] === 2 ? 2 : 1);
  return withGate(counted, id, refitted(site, entry(counted, 'gates', id), way, parts));
};
