import { usualSpec } from '../../engine/usualSpec.ts';
import type { Parts } from '../../site/parts.ts';
import type { Plans } from '../../store/plans.ts';
import { defaultToleranceZone } from '../../trade/toleranceZones.ts';
import { usualHeights } from '../../trade/usualHeights.ts';
import { inches } from '../../units/inches.ts';
import { gatePlan, usualParts } from './gatePlan.ts';
import { genericBook } from './genericBook.ts';

const walk = inches(48);

/**
 * What is drawn before anybody has chosen: a 4 ft fence, a 4 ft walk gate with the book's figures. A
 * buried line is kept off by the usual tolerance zone on each side; a tree by its roots.
 */
export const plansFrom = (book: Parts): Plans => ({
  fence: usualSpec(inches(48)),
  gate: gatePlan(1, walk, usualParts(1, walk, book)),
  utility: {
    service: 'gas',
    run: 'buried',
    width: inches(2),
    tolerance: defaultToleranceZone.length,
  },
  heights: usualHeights,
  tree: { trunk: inches(8), roots: inches(48) },
});

/** Those of a book in which nobody has written. */
export const startingPlans: Plans = plansFrom(genericBook);
