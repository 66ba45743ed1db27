import { padPlan } from '../../drawing/plan/padPlan.ts';
import type { Primitive } from '../../drawing/primitive.ts';
import type { Layout } from '../../engine/layout.ts';
import type { Site } from '../../site/site.ts';

const known = new WeakMap<Layout, readonly Primitive[]>();

/**
 * The plan of a site for the pad, remembered for its layout: a site that differs in nothing but the
 * pictures under it has the very same layout, and so the very same plan.
 */
export const planOf = (site: Site, layout: Layout): readonly Primitive[] => {
  const found = known.get(layout);
  if (found !== undefined) return found;
  const plan = padPlan(site, layout);
  known.set(layout, plan);
  return plan;
};
