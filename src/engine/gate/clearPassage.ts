import type { Gate } from '../../site/gate.ts';
import { leastClearWidth } from '../../trade/clearWidth.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { GateLayout, LeafLayout } from '../layout.ts';
import { halvesOf } from './halvesOf.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What is left to pass through when the leaves stand open, inches, and how it came about. */
export interface Passage {
  readonly clear: Inches;
  /** The opening, then what is taken off it, below zero. */
  readonly terms: readonly { readonly label: string; readonly size: Inches }[];
  readonly source: string;
}

/**
 * How far from the face of its post an open leaf reaches into the opening, inches, where its hinges take up so
 * much between post and frame; open is a quarter at most.
 */
export const standsIn = (leaf: LeafLayout, taken: Inches): number => {
  const turned = Math.min(Math.abs(leaf.turns), Math.PI / 2);
  const pin = taken - leaf.hung;
  const across = (leaf.thickness / 2) * Math.sin(turned);
  return pin + (leaf.hung + leaf.width) * Math.cos(turned) + across;
};

const within = (
  target: Inches,
  leaves: readonly { readonly leaf: LeafLayout; readonly taken: Inches }[],
): Passage => {
  const taken = leaves.map(({ leaf, taken: own }) => ({
    label: phrase`pin and half of the frame of a leaf that stands open`,
    size: inches(0 - standsIn(leaf, own)),
  }));
  const terms = [{ label: phrase`opening`, size: target }, ...taken];
  const clear = terms.reduce((sum, { size }) => sum + size, 0);
  return { clear: inches(clear), terms, source: leastClearWidth.source.text };
};

/**
 * The clear passage of a gate: its opening less what each leaf takes when it stands at 90 degrees
 * (or as far as it turns, where that is less), from the face of its post to its far side. Of a pair
 * with a stop between, the wider of the two. What rolls or is not there takes nothing. A latch that
 * stands out from a post or a leaf is not counted: measure it.
 */
export const clearPassage = ({ way }: Pick<Gate, 'way'>, gate: GateLayout): Passage => {
  const hinges = gate.opening.terms.filter(({ role }) => role === 'hinge');
  const leaves = gate.leaves.map((leaf, n) => ({ leaf, taken: hinges[n]?.planned ?? inches(0) }));
  const halves = way.kind === 'centre stop' ? halvesOf(gate.opening) : null;
  if (halves === null) return within(gate.opening.target, leaves);
  const each = halves.map(({ target }, n) => within(target, leaves.slice(n, n + 1)));
  return each.reduce((widest, one) => (one.clear > widest.clear ? one : widest));
};
