import { grouped } from '../../engine/load/grouped.ts';
import { leavesOf } from '../../engine/gate/termsOf.ts';
import type { Layout } from '../../engine/layout.ts';
import type { Gate, Leaf } from '../../site/gate.ts';
import type { Hardware } from '../../site/hardware.ts';
import type { GateId, HardwareId } from '../../site/ids.ts';
import { leafWidth } from '../../site/leafWidth.ts';
import { readWidths } from '../../site/readWidths.ts';
import type { Site } from '../../site/site.ts';
import { hingeSets } from '../../trade/hingeSets.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Inches } from '../../units/inches.ts';
import { pipeSize } from '../../units/pipeSize.ts';
import { exactStyle } from './exactStyle.ts';
import { fitText } from './fitText.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

/** The parts of an order, in the order in which they are listed. */
export const orderGroups = ['Leaves', 'Hinges', 'Latches', 'Closers'] as const;

/** One kind of thing to be ordered: alike in all that is said of it here. Texts as they are printed. */
export interface OrderLine {
  readonly group: (typeof orderGroups)[number];
  readonly count: number;
  readonly item: string;
  readonly width: string;
  readonly height: string;
  readonly frame: string;
  readonly hinges: string;
  /** Of a part: whether it fits the posts and frames that it is for. */
  readonly fit: string;
  /** The gates that it is for. */
  readonly gates: string;
  readonly knownFrom: string;
}

/** One thing, how many of it, and the gate that it is for. */
interface Single {
  readonly told: Omit<OrderLine, 'count' | 'gates'>;
  readonly count: number;
  readonly gate: string;
}

/** What the posts and frames of a site are known from. */
type FitGround = Pick<Layout, 'posts' | 'gates'>;

const unsaid = phrase`not said`;

const nameOf = (site: Site, id: GateId): string => site.gates[id]?.label.trim() || phrase`Gate`;

const bare = { width: '', height: '', frame: '', hinges: '', fit: '' } as const;

const leafFrom = {
  measured: phrase`measured`,
  copied: phrase`copied: measure it`,
  catalogue: phrase`to be made`,
} as const;

const partFrom: Readonly<Record<Hardware['from'], string>> = {
  measured: phrase`measured`,
  book: phrase`hardware book`,
  assumed: phrase`assumed: measure it`,
};

const lengthText = (length: Inches, { lengths }: Site): string =>
  formatLength(length, exactStyle([length], lengths));

/** The width that governs; of a leaf out of true also what was read at its top and bottom. */
const widthText = ({ widths }: Pick<Leaf, 'widths'>, site: Site): string => {
  const own = lengthText(leafWidth({ widths }), site);
  if (readWidths(widths).every((width) => lengthText(width, site) === own)) return own;
  const { top, bottom } = widths;
  const ends = [phrase`top ${lengthText(top, site)}`];
  if (bottom !== null) ends.push(phrase`bottom ${lengthText(bottom, site)}`);
  return `${own} (${ends.join(', ')})`;
};

/**
 * Where the hinges of a leaf are for one who stands on the side that it opens to and looks at it.
 * Of one who looks from the hinges to the latch the left hand points to the left side; from there
 * the hinges are on the right.
 */
const hingeSide = (gate: Gate, n: number): string => {
  if (gate.way.kind === 'cantilever') return phrase`rolls`;
  const two = Object.keys(gate.leaves).length > 1;
  const fromStart = two ? n === 0 : gate.hingedAt === 'start';
  return fromStart === (gate.opens === 'left') ? phraseOf('side')`right` : phraseOf('side')`left`;
};

const leafLines = (site: Site, gate: Gate, name: string): Single[] =>
  leavesOf(gate).map((leaf, n) => ({
    gate: name,
    count: 1,
    told: {
      ...bare,
      group: 'Leaves',
      item: gate.way.kind === 'cantilever' ? phrase`Rolling leaf` : phrase`Leaf`,
      width: widthText(leaf, site),
      height: leaf.height === null ? unsaid : lengthText(leaf.height, site),
      frame: leaf.frame === null ? unsaid : pipeSize(leaf.frame.od, site.lengths),
      hinges: hingeSide(gate, n),
      knownFrom: leafFrom[leaf.from],
    },
  }));

/** So many of a part, and what it does in its gate. */
interface Placed {
  readonly group: Exclude<OrderLine['group'], 'Leaves'>;
  readonly id: HardwareId | null;
  readonly count: number;
}

const roles = { Hinges: 'hinge', Latches: 'latch', Closers: 'closer' } as const;

/** What of a part is told apart on an order: by its label, how it is known and whether it fits. */
const partLines = (
  site: Site,
  layout: FitGround,
  gate: GateId,
  { group, id, count }: Placed,
): Single[] => {
  const part = id === null ? undefined : site.hardware[id];
  if (id === null || part === undefined || count === 0) return [];
  const fit = fitText(site, layout, { gate, role: roles[group], part: id });
  const told = { ...bare, group, item: part.label, fit, knownFrom: partFrom[part.from] };
  return [{ gate: nameOf(site, gate), count, told }];
};

const linesOf = (site: Site, layout: FitGround, id: GateId, gate: Gate): Single[] => {
  const leaves = leavesOf(gate);
  const latches = gate.way.kind === 'centre stop' ? leaves.length : Math.min(1, leaves.length);
  const parts: readonly Placed[] = [
    ...leaves.map(({ hinge }) => {
      return { group: 'Hinges', id: hinge, count: hingeSets.perLeaf } as const;
    }),
    { group: 'Latches', id: gate.latch, count: latches },
    { group: 'Closers', id: gate.closer, count: leaves.length },
  ];
  return [
    ...leafLines(site, gate, nameOf(site, id)),
    ...parts.flatMap((placed) => partLines(site, layout, id, placed)),
  ];
};

/**
 * All that is to be ordered for the gates of a site: leaves, two hinge sets for each, latches (one
 * for each leaf where two latch to a stop), closers. What is alike in every word stands once with
 * its count. A gap without a gate orders nothing.
 */
export const orderLines = (site: Site, layout: FitGround): readonly OrderLine[] => {
  const gates = Object.entries(site.gates) as [GateId, Gate][];
  const singles = gates.flatMap(([id, gate]) => linesOf(site, layout, id, gate));
  const lines = grouped(singles, ({ told }) => JSON.stringify(told)).flatMap(
    (same): OrderLine[] => {
      const [first] = same;
      if (first === undefined) return [];
      return [
        {
          ...first.told,
          count: same.reduce((all, { count }) => all + count, 0),
          gates: [...new Set(same.map(({ gate }) => gate))].join(', '),
        },
      ];
    },
  );
  return orderGroups.flatMap((group) => lines.filter((line) => line.group === group));
};
