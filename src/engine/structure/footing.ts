import { augerFor, augerSizes, holeDepth, holeDiameter, holeRule } from '../../trade/footings.ts';
import { belowFrost, frostSource, rockCore } from '../../trade/frost.ts';
import { gatePostFor } from '../../trade/gatePosts.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { holeVolume } from './holeVolume.ts';
import {
  constrainedDepth,
  nonconstrainedDepth,
  type PolePush,
  type PoleTrial,
} from './poleFooting.ts';
import type { FootingRule } from './footingRules.ts';

/** What a footing is asked for. Lengths in inches. */
export interface FootingDemand {
  readonly od: Inches;
  readonly fabricHeight: Inches;
  /** The widest leaf that hangs from the post; null for none. */
  readonly leaf: Inches | null;
  /** How wide the hole is dug in any case, where that is said. */
  readonly dug?: Inches;
  /** What the hole is dug in: in rock a core is drilled, and neither frost nor a push asks for more. */
  readonly into: 'soil' | 'rock';
  /** How deep the ground freezes; null where nobody has said. */
  readonly frost: Inches | null;
  /** A push on the post and what the ground bears; null where only the rules count. */
  readonly pole: {
    readonly push: PolePush;
    /** Lateral bearing, pounds per square foot for each foot of depth, with every increase that is allowed. */
    readonly lateral: number;
    /** Whether nothing holds the post at the ground, or paving does. */
    readonly held: 'by nothing' | 'by paving';
  } | null;
}

/** What one rule asks for: a diameter, a depth or both, inches. */
export interface FootingRow {
  readonly rule: FootingRule;
  readonly diameter: Inches | null;
  readonly depth: Inches | null;
  readonly source: string;
  /** The trials of the pole formula; none for the other rules. */
  readonly trials: readonly PoleTrial[];
}

/** A footing by the most that its rules ask for. */
export interface Footing {
  readonly rows: readonly FootingRow[];
  readonly diameter: Inches;
  /** Null where the pole formula finds no depth. */
  readonly depth: Inches | null;
  /** Concrete in cubic inches, without the post; null without a depth. */
  readonly concrete: number | null;
}

const row = (
  rule: FootingRule,
  source: string,
  asked: Partial<Pick<FootingRow, 'diameter' | 'depth' | 'trials'>>,
): FootingRow => ({ rule, source, diameter: null, depth: null, trials: [], ...asked });

const gateRows = (leaf: Inches | null): FootingRow[] => {
  const size = leaf === null ? null : gatePostFor(leaf);
  if (size === null) return [];
  const { footingDiameter: diameter, footingDepth: depth } = size;
  return [row('gate post', size.source.text, { diameter, depth })];
};

const frostRows = (frost: Inches | null): FootingRow[] =>
  frost === null ? [] : [row('frost', frostSource.text, { depth: inches(frost + belowFrost) })];

const poleRows = (pole: FootingDemand['pole'], width: Inches): FootingRow[] => {
  if (pole === null) return [];
  const { push, lateral, held } = pole;
  if (held === 'by paving') {
    const depth = constrainedDepth(push, { width, lateral });
    return [row('pole held at the ground', 'IBC 1807.3.2.2', { depth })];
  }
  return [row('pole', 'IBC 1807.3.2.1', nonconstrainedDepth(push, { width, lateral }))];
};

/** A post in rock: a core a little wider than the post, grouted. */
const cored = (od: Inches): Footing => {
  const { wider, depth, source } = rockCore;
  const diameter = inches(od + wider);
  return {
    rows: [row('core in rock', source.text, { diameter, depth })],
    diameter,
    depth,
    concrete: holeVolume({ diameter, depth }, { od, section: 'round' }),
  };
};

/**
 * The footing of a post by every rule that applies: hole by ASTM F567 rounded up to an auger, the
 * handbook's table for a gate post, frost, the pole formula of the building code on the widest hole of
 * these. The largest of each counts. RangeError for a push or ground that cannot be.
 */
export const footing = (demand: FootingDemand): Footing => {
  const { od, fabricHeight, leaf, frost, pole, into, dug = inches(0) } = demand;
  if (into === 'rock') return cored(od);
  const bored = augerFor(holeDiameter(od));
  const rules = [
    row('hole', `${holeRule.text}; ${augerSizes.text}`, {
      diameter: bored,
      depth: holeDepth(fabricHeight),
    }),
    ...gateRows(leaf),
    ...frostRows(frost),
  ];
  const diameter = inches(Math.max(dug, ...rules.map((one) => one.diameter ?? 0)));
  const rows = [...rules, ...poleRows(pole, diameter)];
  const unfound = rows.some(({ depth }) => depth === null);
  const depth = unfound ? null : inches(Math.max(...rows.map((one) => one.depth ?? 0)));
  return {
    rows,
    diameter,
    depth,
    concrete: depth === null ? null : holeVolume({ diameter, depth }, { od, section: 'round' }),
  };
};
