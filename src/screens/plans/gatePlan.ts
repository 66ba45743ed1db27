import { leavesFor } from '../../engine/gate/leavesFor.ts';
import { phrase } from '../../phrases/phrase.ts';
import type { Parts } from '../../site/parts.ts';
import { roundPost } from '../../site/roundPost.ts';
import type { GatePlan, PartPlan } from '../../store/plans.ts';
import { gatePostFor } from '../../trade/gatePosts.ts';
import { dropRod, forkLatch, heavyHinge, residentialHinge } from '../../trade/hardware.ts';
import { inches, sum, type Inches } from '../../units/inches.ts';
import { bookPart } from './bookPart.ts';
import { genericBook } from './genericBook.ts';

/** Leaves are made in these steps; common practice, no published source. */
const step = inches(0.125);
/** Leaves wider than this hang on heavy hinges: the handbook's first row of gate posts ends there. */
const widestLight = inches(72);

/** The hinge of every leaf, and the latch. */
export interface GateParts {
  readonly hinge: PartPlan;
  readonly latch: PartPlan;
}

/** The usual hinge and latch for an opening (inches), with the figures that the book has of them. */
export const usualParts = (leaves: 1 | 2, opening: Inches, book: Parts): GateParts => ({
  hinge: bookPart(opening / leaves > widestLight ? heavyHinge : residentialHinge, book),
  latch: bookPart(leaves === 1 ? forkLatch : dropRod, book),
});

/**
 * A gate for an opening that gates are sold for (inches): equal leaves worked out from it with its
 * hinges and latch. Flagged as catalogue widths until somebody measures them. RangeError where the
 * hinges and latch leave no room for a leaf.
 */
export const gatePlan = (
  leaves: 1 | 2,
  opening: Inches,
  { hinge, latch }: GateParts = usualParts(leaves, opening, genericBook),
): GatePlan => {
  const parts = [...Array.from({ length: leaves }, () => hinge), latch];
  const taken = sum(parts.map(({ hardware }) => hardware.takes.planned));
  const { leaf } = leavesFor(opening, taken, leaves, step);
  const post = gatePostFor(leaf)?.post;
  return {
    label: leaves === 1 ? phrase`Walk gate` : phrase`Double gate`,
    leaves: Array.from({ length: leaves }, () => ({
      width: leaf,
      from: 'catalogue' as const,
      hinge,
    })),
    latch,
    opens: 'right',
    hingedAt: 'start',
    nominal: opening,
    post: leaf > widestLight && post ? roundPost(post) : null,
  };
};
