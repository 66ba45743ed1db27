import type { Gate, Leaf } from '../../site/gate.ts';
import type { GateId, LeafId } from '../../site/ids.ts';
import { leafWidth } from '../../site/leafWidth.ts';
import { oneWidth } from '../../site/oneWidth.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, sum, type Inches } from '../../units/inches.ts';
import type { Opening } from '../opening.ts';
import { openingOf } from './openingOf.ts';
import { leavesOf, termsOf } from './termsOf.ts';
import { phrase } from '../../phrases/phrase.ts';

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
  if (gate === undefined) throw new RangeError(phrase`gate ${id}: expected one of this site`);
  return gate;
};

/** A billionth of a step under it is rounding, not a smaller leaf. */
const roundedDown = (width: number, step: Inches): Inches =>
  inches(Math.floor((width / step) * (1 + 1e-9)) * step);

/** What is left for the leaves of a gate, how wide they are now and the shop's step, in inches. */
interface Room {
  readonly left: number;
  readonly now: readonly Inches[];
  readonly step: Inches;
}

/** Widths that share the room, each rounded down: alike, or two that differ as they do now. */
const shared = ({ left, now, step }: Room, share: LeafShare): Inches[] => {
  const [first = inches(0), second = first] = now;
  const apart = share === 'equal' || now.length === 1 ? 0 : second - first;
  const one = (left - apart) / now.length;
  return now.map((_, n) => roundedDown(n === 0 ? one : one + apart, step));
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
  const now = leavesOf(gate);
  if (now.length === 0)
    throw new RangeError(phrase`gate ${id}: expected leaves to order, found a gap`);
  const rest = termsOf(gate, site).filter(({ role }) => role !== 'leaf');
  const taken = sum(rest.map(({ planned }) => planned));
  const room = { left: want - taken, now: now.map(leafWidth), step: site.shop.leafStep };
  const widths = shared(room, share);
  if (widths.some((width) => !(width > 0))) {
    const of =
      share === 'equal' || now.length === 1
        ? phrase`a leaf`
        : phrase`two leaves as far apart as now`;
    const write = (length: Inches): string => formatLength(length, fineStyle(site.lengths));
    throw new RangeError(
      phrase`Opening of ${write(want)}: expected room for ${of}; all else takes up ${write(taken)}`,
    );
  }
  const leaves = now.map((leaf, n) => ({ id: leaf.id, width: widths[n] ?? inches(0) }));
  const made = leaves.map(({ id: leaf, width }): [LeafId, Leaf | undefined] => {
    const own = gate.leaves[leaf];
    const catalogue = { widths: oneWidth(width), from: 'catalogue', on: '' } as const;
    return [leaf, own && { ...own, ...catalogue }];
  });
  const ordered = { ...gate, leaves: Object.fromEntries(made) as Gate['leaves'] };
  return { leaves, opening: openingOf(termsOf(ordered, site)) };
};
