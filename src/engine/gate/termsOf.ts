import { inOrder } from '../../site/pathOrder.ts';
import type { Gate, Leaf } from '../../site/gate.ts';
import type { Hardware } from '../../site/hardware.ts';
import type { HardwareId, LeafId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import type { Term } from '../opening.ts';

/** The leaves of a gate, the one nearer to the start of its leg first. */
export const leavesOf = (gate: Gate) => inOrder<LeafId, Leaf>(gate.leaves);

const origin: Readonly<Record<Hardware['from'], string>> = {
  measured: 'measured',
  book: 'hardware book',
  assumed: 'assumed: measure it',
};

const leafOrigin: Readonly<Record<Leaf['from'], string>> = {
  measured: 'measured',
  copied: 'copied from the other leaf: measure it',
  catalogue: 'catalogue: measure it',
};

const hardwareTerm = (role: 'hinge' | 'latch', part: Hardware): Term => ({
  role,
  label: part.label,
  ...part.takes,
  source: origin[part.from],
});

const leafTerm = (leaf: Leaf, label: string): Term => ({
  role: 'leaf',
  label,
  low: leaf.width,
  planned: leaf.width,
  high: leaf.width,
  source: leafOrigin[leaf.from],
});

const part = (site: Site, id: HardwareId): Hardware => {
  const found = site.hardware[id];
  if (found === undefined) throw new RangeError(`hardware ${id}: expected it in the site`);
  return found;
};

/**
 * What takes up width in a gate's opening, in the order met along the leg: hinge, leaf, latch for
 * a single leaf hung at the start; hinge, leaf, latch, leaf, hinge for two leaves.
 */
export const termsOf = (gate: Gate, site: Site): readonly Term[] => {
  const latch = hardwareTerm('latch', part(site, gate.latch));
  const leaves = leavesOf(gate);
  const sides = leaves.map((leaf, n) => [
    hardwareTerm('hinge', part(site, leaf.hinge)),
    leafTerm(leaf, leaves.length === 1 ? 'Leaf' : `Leaf ${n + 1}`),
  ]);
  const [first = [], second] = sides;
  if (second !== undefined) return [...first, latch, ...second.toReversed()];
  const along = [...first, latch];
  return gate.hingedAt === 'start' ? along : along.toReversed();
};
