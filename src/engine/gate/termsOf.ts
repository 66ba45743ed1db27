import { inOrder } from '../../site/pathOrder.ts';
import type { Gate, Leaf } from '../../site/gate.ts';
import type { GateWay } from '../../site/gateWay.ts';
import type { Hardware } from '../../site/hardware.ts';
import type { HardwareId, LeafId } from '../../site/ids.ts';
import { leafWidth } from '../../site/leafWidth.ts';
import { readWidths } from '../../site/readWidths.ts';
import type { Site } from '../../site/site.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Term } from '../opening.ts';
import { phrase } from '../../phrases/phrase.ts';

type Leaves = readonly (Leaf & { readonly id: LeafId })[];

const sorted = new WeakMap<Gate['leaves'], Leaves>();

/** The leaves of a gate, the one nearer to the start of its leg first; remembered for each map of leaves. */
export const leavesOf = ({ leaves }: Pick<Gate, 'leaves'>): Leaves => {
  const known = sorted.get(leaves);
  if (known !== undefined) return known;
  const found = inOrder<LeafId, Leaf>(leaves);
  sorted.set(leaves, found);
  return found;
};

type NamedLeaf = ReturnType<typeof leavesOf>[number];

const origin: Readonly<Record<Hardware['from'], string>> = {
  measured: phrase`measured`,
  book: phrase`hardware book`,
  assumed: phrase`assumed: measure it`,
};

const leafOrigin: Readonly<Record<Leaf['from'], string>> = {
  measured: phrase`measured`,
  copied: phrase`copied from the other leaf: measure it`,
  catalogue: phrase`catalogue: measure it`,
};

const part = (site: Site, id: HardwareId | null): Hardware => {
  const found = id === null ? undefined : site.hardware[id];
  if (found === undefined) throw new RangeError(`hardware ${id}: expected it in the site`);
  return found;
};

const hardwareTerm = (role: 'hinge' | 'latch', site: Site, id: HardwareId | null): Term => {
  const { label, takes, spread, from, on } = part(site, id);
  const how = role === 'latch' ? 'catch' : spread;
  return { role, of: id, label, ...takes, spread: how, source: origin[from], on };
};

/** A leaf planned at its largest width: that is the one that has to go in. */
const leafTerm = (leaf: NamedLeaf, label: string): Term => ({
  role: 'leaf',
  of: leaf.id,
  label,
  low: inches(Math.min(...readWidths(leaf.widths))),
  planned: leafWidth(leaf),
  high: leafWidth(leaf),
  spread: 'uncertain',
  source: leafOrigin[leaf.from],
  on: leaf.on,
});

/** A term of one size, decided when the gate was planned. */
const plannedTerm = (role: 'stop' | 'gap', label: string, size: Inches): Term => ({
  role,
  of: null,
  label,
  low: size,
  planned: size,
  high: size,
  spread: 'uncertain',
  source: phrase`planned`,
  on: '',
});

/**
 * The tail of a leaf that rolls: what stays behind the face of the first roller post when it is
 * closed, so that the opening is so much narrower than the leaf. It closes wherever it stops, so
 * the tail is adjustable: shorter until the overlap is used up, with the tail still on both
 * rollers; longer, where the posts stand nearer, by as much as its overlap again.
 */
const tailTerms = (way: Extract<GateWay, { kind: 'cantilever' }>, label: string): Term[] => {
  const { overlap, counterbalance, rollers } = way;
  const spared = Math.min(overlap, Math.max(0, overlap + counterbalance - rollers));
  const planned = { role: 'overlap', of: null, source: phrase`planned`, on: '' } as const;
  return [
    {
      ...planned,
      label: phrase`${label}: counterbalance`,
      low: inches(0 - counterbalance),
      planned: inches(0 - counterbalance),
      high: inches(0 - counterbalance),
      spread: 'adjustable',
    },
    {
      ...planned,
      label: phrase`${label}: overlap`,
      low: inches(0 - 2 * overlap),
      planned: inches(0 - overlap),
      high: inches(spared - overlap),
      spread: 'adjustable',
    },
  ];
};

/** What stands on one side of the middle, from the post inwards. */
const sideTerms = (gate: Gate, site: Site, leaf: NamedLeaf, label: string): Term[] => {
  const { way } = gate;
  const own = leafTerm(leaf, label);
  if (way.kind === 'cantilever') return [...tailTerms(way, label), own];
  return [hardwareTerm('hinge', site, leaf.hinge), own];
};

/** What stands between two leaves. */
const middleTerms = ({ way, latch }: Gate, site: Site): Term[] => {
  const caught = hardwareTerm('latch', site, latch);
  if (way.kind !== 'centre stop') return [caught];
  return [caught, plannedTerm('stop', phrase`Centre stop`, way.stop), caught];
};

/**
 * What takes up width in a gate's opening, in the order met along the leg: hinge, leaf, latch for
 * a single leaf hung at the start; hinge, leaf, latch, leaf, hinge for two leaves, with a stop
 * between two latches where they latch to a stop; counterbalance and overlap in place of the hinge
 * where leaves roll; the clear width alone for a gap.
 */
export const termsOf = (gate: Gate, site: Site): readonly Term[] => {
  const { way, hingedAt } = gate;
  if (way.kind === 'gap') return [plannedTerm('gap', phrase`Gap`, way.clear)];
  const leaves = leavesOf(gate);
  const sides = leaves.map((leaf, n) =>
    sideTerms(gate, site, leaf, leaves.length === 1 ? phrase`Leaf` : phrase`Leaf ${n + 1}`),
  );
  const [first = [], second] = sides;
  if (second !== undefined) return [...first, ...middleTerms(gate, site), ...second.toReversed()];
  const along = [...first, ...middleTerms(gate, site)];
  const hung = way.kind === 'cantilever' ? way.stores : hingedAt;
  return hung === 'start' ? along : along.toReversed();
};
