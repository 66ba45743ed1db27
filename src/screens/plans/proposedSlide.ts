import { openingOf } from '../../engine/gate/openingOf.ts';
import { leavesOf, termsOf } from '../../engine/gate/termsOf.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { Gate } from '../../site/gate.ts';
import type { GateWay } from '../../site/gateWay.ts';
import { leafWidth } from '../../site/leafWidth.ts';
import type { Site } from '../../site/site.ts';
import type { Source } from '../../trade/source.ts';
import { slideOfLeaf } from '../../trade/slides.ts';
import { inches, type Inches } from '../../units/inches.ts';

const sizes = ['overlap', 'counterbalance', 'rollers', 'behind'] as const;

/** Sizes for a gate that rolls, where nobody has measured them, and what they would come to. */
export interface SlideProposal {
  readonly way: Extract<GateWay, { kind: 'cantilever' }>;
  /** The leaf that they are for: of two the shorter, out to out. Inches. */
  readonly leaf: Inches;
  /** The opening to hold with them, inches. */
  readonly opening: Inches;
  readonly source: Source;
}

/**
 * What the trade would begin with for the leaves of a gate that rolls; null for any other gate, for
 * leaves too short to roll, and where the gate has these sizes already.
 */
export const proposedSlide = (site: Site, gate: Gate): SlideProposal | null => {
  const { way } = gate;
  if (way.kind !== 'cantilever') return null;
  const leaf = inches(Math.min(...leavesOf(gate).map(leafWidth)));
  const slide = slideOfLeaf(leaf);
  if (slide === null) return null;
  const { source, ...proposed } = slide;
  if (sizes.every((key) => Math.abs(way[key] - proposed[key]) <= slack)) return null;
  const next = { ...way, ...proposed };
  const opening = openingOf(termsOf({ ...gate, way: next }, site)).target;
  return { way: next, leaf, opening, source };
};
