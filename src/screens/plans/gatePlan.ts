import { leavesFor } from '../../engine/gate/leavesFor.ts';
import type { GatePlan } from '../../store/plans.ts';
import { gatePostFor } from '../../trade/gatePosts.ts';
import { dropRod, forkLatch, heavyHinge, residentialHinge } from '../../trade/hardware.ts';
import { inches, sum, type Inches } from '../../units/inches.ts';
import { assumedPart } from './offeredParts.ts';

/** Leaves are made in these steps; common practice, no published source. */
const step = inches(0.125);
/** Leaves wider than this hang on heavy hinges: the handbook's first row of gate posts ends there. */
const widestLight = inches(72);

/**
 * A gate for an opening that gates are sold for (inches): equal leaves worked out from it with
 * assumed hinges and latch. Flagged as catalogue widths until somebody measures them.
 */
export const gatePlan = (leaves: 1 | 2, opening: Inches): GatePlan => {
  const hinge = opening / leaves > widestLight ? heavyHinge : residentialHinge;
  const latch = leaves === 1 ? forkLatch : dropRod;
  const taken = sum(
    [...Array.from({ length: leaves }, () => hinge), latch].map(({ takes }) => takes.planned),
  );
  const { leaf } = leavesFor(opening, taken, leaves, step);
  const post = gatePostFor(leaf)?.post;
  return {
    label: leaves === 1 ? 'Walk gate' : 'Double gate',
    leaves: Array.from({ length: leaves }, () => ({
      width: leaf,
      from: 'catalogue' as const,
      hinge: assumedPart(hinge),
    })),
    latch: assumedPart(latch),
    opens: 'right',
    hingedAt: 'start',
    nominal: opening,
    post: leaf > widestLight && post ? { label: post.label, od: post.od, wall: post.wall } : null,
  };
};
