import { padGroups } from '../../drawing/plan/padPlan.ts';
import type { Group } from '../../drawing/group.ts';
import { newCarry, type Pieces } from '../../engine/carry/carry.ts';
import type { Layout } from '../../engine/layout.ts';
import type { Site } from '../../site/site.ts';

const known = new WeakMap<Layout, readonly Group[]>();
let before: Pieces | undefined;

/**
 * The plan of a site for the pad, remembered for its layout: a site that differs in nothing but the
 * pictures under it has the very same layout, and so the very same plan. What is drawn of the same as in the
 * plan that was asked for last is the very same group.
 */
export const planOf = (site: Site, layout: Layout): readonly Group[] => {
  const found = known.get(layout);
  if (found !== undefined) return found;
  const carry = newCarry(before);
  const plan = padGroups(site, layout, carry);
  before = carry.pieces;
  known.set(layout, plan);
  return plan;
};
