import type { GatePlan } from '../store/plans.ts';

/** The plan after its gate is placed: what was measured is the leaf of that gate, the next one has its width copied. */
export const unmeasured = (plan: GatePlan): GatePlan => ({
  ...plan,
  leaves: plan.leaves.map((leaf) =>
    leaf.from === 'measured' ? { ...leaf, from: 'copied' } : leaf,
  ),
});
