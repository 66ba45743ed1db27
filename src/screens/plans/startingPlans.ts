import type { Plans } from '../../store/plans.ts';
import { inches } from '../../units/inches.ts';
import { fencePlan } from './fencePlan.ts';
import { gatePlan } from './gatePlan.ts';

/**
 * What is drawn before anybody has chosen: a 4 ft fence, a 4 ft walk gate. A buried line is kept
 * off by 24 in each side, the larger of the usual tolerance zones; a tree by its roots.
 */
export const startingPlans: Plans = {
  fence: fencePlan(inches(48)),
  gate: gatePlan(1, inches(48)),
  utility: { service: 'gas', width: inches(2), tolerance: inches(24) },
  tree: { trunk: inches(8), roots: inches(48) },
};
