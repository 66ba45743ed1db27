import { inches, type Inches } from '../../units/inches.ts';
import type { WindFence } from './fenceWind.ts';

/**
 * A fence with ice of a thickness (inches) all round its wire and pipe, as wind meets it: what was open
 * of the fabric is so in the share of the mesh that stays open, 1 − (1 − ε) ((M − 2t) ÷ M)², and every
 * wire and pipe is thicker by twice the ice. Derived; how much ice there is, is for the place to say.
 */
export const iced = (fence: WindFence, ice: Inches): WindFence => {
  if (ice === 0) return fence;
  const both = 2 * ice;
  const left = Math.max(0, fence.mesh - both) / fence.mesh;
  const thicker = (od: Inches): Inches => inches(od + both);
  const { barbedWire } = fence;
  return {
    ...fence,
    solidity: 1 - (1 - fence.solidity) * left ** 2,
    wire: thicker(fence.wire),
    post: thicker(fence.post),
    rails: fence.rails.map((rail) => ({ ...rail, od: thicker(rail.od) })),
    barbedWire: barbedWire && { ...barbedWire, across: thicker(barbedWire.across) },
  };
};
