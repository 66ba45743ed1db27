import { leavesFor } from '../../engine/gate/leavesFor.ts';
import { openingOf } from '../../engine/gate/openingOf.ts';
import type { Opening } from '../../engine/opening.ts';
import { setGateLeaf } from '../../site/edits/setGateLeaf.ts';
import type { GateId, LeafId } from '../../site/ids.ts';
import { oneWidth } from '../../site/oneWidth.ts';
import type { Site } from '../../site/site.ts';
import { inches, sum, type Inches } from '../../units/inches.ts';

/** Leaves to order for a wanted opening, and the opening worked out again with them. */
export interface OrderedLeaves {
  readonly count: number;
  readonly leaf: Inches;
  readonly opening: Opening;
}

/**
 * Equal leaves for a wanted opening, all in inches, rounded down to the shop's step: what the other
 * terms of the opening, as planned, leave. RangeError where they leave nothing.
 */
export const orderedLeaves = ({ terms }: Opening, want: Inches, step: Inches): OrderedLeaves => {
  const count = terms.filter(({ role }) => role === 'leaf').length;
  const taken = sum(terms.flatMap(({ role, planned }) => (role === 'leaf' ? [] : [planned])));
  const { leaf } = leavesFor(want, inches(taken), count, step);
  const sizes = { low: leaf, planned: leaf, high: leaf } as const;
  const fitted = terms.map((term) => (term.role === 'leaf' ? { ...term, ...sizes } : term));
  return { count, leaf, opening: openingOf(fitted) };
};

/** A site in which every leaf of a gate is of a width (inches) that is to be made. */
export const withLeaves = (site: Site, id: GateId, width: Inches): Site =>
  (Object.keys(site.gates[id]?.leaves ?? {}) as LeafId[]).reduce(
    (so, leaf) => setGateLeaf(so, id, leaf, { widths: oneWidth(width), from: 'catalogue', on: '' }),
    site,
  );
