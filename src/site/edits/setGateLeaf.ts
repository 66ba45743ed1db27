import { entry } from '../entry.ts';
import type { Leaf } from '../gate.ts';
import type { GateId, LeafId } from '../ids.ts';
import { quoted } from '../quoted.ts';
import type { Site } from '../site.ts';
import { withGate } from '../withGate.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * Changes what is known of one leaf: widths, height and frame in inches, where they are from and of
 * which day, hinge. RangeError for an unknown gate, leaf or hinge, and for a size of zero or less.
 */
export const setGateLeaf = (
  site: Site,
  id: GateId,
  leaf: LeafId,
  fields: Partial<Omit<Leaf, 'order'>>,
): Site => {
  const gate = entry(site, 'gates', id);
  const old = Object.hasOwn(gate.leaves, leaf) ? gate.leaves[leaf] : undefined;
  if (old === undefined) {
    throw new RangeError(
      phrase`gates › ${id} › leaves: expected a leaf of it, found ${quoted(leaf)}`,
    );
  }
  return withGate(site, id, { ...gate, leaves: { ...gate.leaves, [leaf]: { ...old, ...fields } } });
};
