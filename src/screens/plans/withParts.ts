import type { GatePlan } from '../../store/plans.ts';
import { gatePlan, type GateParts } from './gatePlan.ts';

/**
 * The next gate with another hinge or latch. Leaves out of the catalogue are worked out anew for the
 * opening that the gate is sold for; leaves that were measured stay as they are. RangeError as
 * `gatePlan`.
 */
export const withParts = (plan: GatePlan, parts: GateParts): GatePlan => {
  const { leaves, nominal } = plan;
  const catalogue = leaves.every(({ from }) => from === 'catalogue');
  const fresh =
    catalogue && nominal !== null ? gatePlan(leaves.length === 1 ? 1 : 2, nominal, parts) : plan;
  return {
    ...plan,
    leaves: fresh.leaves.map((leaf) => ({ ...leaf, hinge: parts.hinge })),
    latch: parts.latch,
  };
};
