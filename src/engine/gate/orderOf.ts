import type { Gate, Leaf } from '../../site/gate.ts';
import type { GateId, LeafId } from '../../site/ids.ts';
import { leafWidth } from '../../site/leafWidth.ts';
import { oneWidth } from '../../site/oneWidth.ts';
import type { Site } from '../../site/site.ts';
import { inches, sum, type Inches } from '../../units/inches.ts';
import type { Opening } from '../opening.ts';
import { leavesFor } from './leavesFor.ts';
import { openingOf } from './openingOf.ts';
import { leavesOf, termsOf } from './termsOf.ts';

/** How two leaves share a wanted opening: alike, or as much apart in width as they are now. */
export type LeafShare = 'equal' | 'as apart as now';

/** Leaves to order for a wanted or already set opening. */
export interface GateOrder {
  /** The one nearer to the start of the leg first; widths in inches, on the shop's step. */
  readonly leaves: readonly { readonly id: LeafId; readonly width: Inches }[];
  /** The opening worked out again with them. */
  readonly opening: Opening;
}

const found = (site: Site, id: GateId): Gate => {
  const gate = site.gates[id];
  if (gate === undefined) throw new RangeError(`gate ${id}: expected one of this site`);
  return gate;
};

/** A billionth of a step under it is rounding, not a smaller leaf. */
const roundedDown = (width: number, step: Inches): Inches =>
  inches(Math.floor((width / step) * (1 + 1e-9)) * step);

/** Two leaves that differ as they do now, each rounded down; the first takes what is left. */
const apartAsNow = (want: Inches, taken: Inches, now: readonly Inches[], step: Inches) => {
  const [first = inches(0), second = first] = now;
  const one = (want - taken - (second - first)) / 2;
  const widths = [roundedDown(one, step), roundedDown(one + second - first, step)];
  if (widths.some((width) => !(width > 0))) {
    throw new RangeError(`opening of ${want} in: expected room for two leaves as far apart as now`);
  }
  return widths;
};

/**
 * Leaves for a wanted or already set opening (inches) with the gate's own hinges and latch as they
 * are planned, rounded down to the shop's step, and the opening that they then make. RangeError of
 * one line for an unknown gate, one without leaves, and an opening that leaves no room for a leaf.
 */
export const orderOf = (
  site: Site,
  id: GateId,
  want: Inches,
  share: LeafShare = 'equal',
): GateOrder => {
  const gate = found(site, id);
  const { leafStep } = site.shop;
  const now = leavesOf(gate);
  if (now.length === 0) throw new RangeError(`gate ${id}: expected leaves to order, found a gap`);
  const rest = termsOf(gate, site).filter(({ role }) => role !== 'leaf');
  const taken = sum(rest.map(({ planned }) => planned));
  const widths =
    share === 'equal' || now.length === 1
      ? now.map(() => leavesFor(want, taken, now.length, leafStep).leaf)
      : apartAsNow(want, taken, now.map(leafWidth), leafStep);
  const leaves = now.map((leaf, n) => ({ id: leaf.id, width: widths[n] ?? inches(0) }));
  const made = leaves.map(({ id: leaf, width }): [LeafId, Leaf | undefined] => {
    const own = gate.leaves[leaf];
    const catalogue = { widths: oneWidth(width), from: 'catalogue', on: '' } as const;
    return [leaf, own && { ...own, ...catalogue }];
  });
  const ordered = { ...gate, leaves: Object.fromEntries(made) as Gate['leaves'] };
  return { leaves, opening: openingOf(termsOf(ordered, site)) };
};
