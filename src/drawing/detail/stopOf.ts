import { freeSwings } from '../../engine/sweep/mayOpen.ts';
import type { Meeting, Surroundings } from '../../engine/sweep/meetings.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { Gate } from '../../site/gate.ts';
import type { GateLayout } from '../../engine/layout.ts';

/**
 * What the leaves of a gate meet the way they open before they have opened by as much as they are to; null for
 * nothing, and for a gate that does not turn or is not placed.
 */
export const stopOf = (
  { opens }: Pick<Gate, 'opens'>,
  laid: GateLayout,
  around: Surroundings,
): Meeting | null => {
  const [leaf] = laid.leaves;
  if (leaf === undefined || !laid.placed) return null;
  const { free, stop } = freeSwings(laid, around)[opens];
  return free < Math.abs(leaf.turns) - slack ? stop : null;
};
