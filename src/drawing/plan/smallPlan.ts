import { boundsOf } from '../../geometry/bounds.ts';
import type { Layout } from '../../engine/layout.ts';
import type { Mark } from '../../site/mark.ts';
import type { Site } from '../../site/site.ts';
import type { Atom } from '../atom.ts';
import { explode } from '../explode.ts';
import { drawPlan, type PlanPart } from './drawPlan.ts';

/** The plan without its letters, small enough for a list. */
export interface SmallPlan {
  readonly atoms: readonly Atom[];
}

/** The size of a small plan in paper inches, with the margin around what is drawn. Ours. */
export const smallPlanSize = { width: 1.6, height: 1.1, margin: 0.08 } as const;

const omit: readonly PlanPart[] = [
  ...(['pins', 'leaf rooms', 'marks', 'gate labels', 'tags', 'chains', 'flags'] as const),
];

/** The whole yard on a small paper, by its marks; null where nothing is drawn. */
export const smallPlan = (site: Site, layout: Layout): SmallPlan | null => {
  const bounds = boundsOf(Object.values<Mark>(site.marks));
  if (bounds === null) return null;
  const { width, height, margin } = smallPlanSize;
  const [wide, high] = [bounds.maxX - bounds.minX, bounds.maxY - bounds.minY];
  const room = { x: width - 2 * margin, y: height - 2 * margin };
  // one mark alone has no size: a yard of 10 ft about it
  const scale = Math.min(room.x / Math.max(wide, 120), room.y / Math.max(high, 120));
  const origin = {
    x: (bounds.minX + bounds.maxX) / 2 - width / 2 / scale,
    y: (bounds.minY + bounds.maxY) / 2 + height / 2 / scale,
  };
  // names bring their lines along, so both go before they are lettered
  const drawn = drawPlan(site, layout, { omit }).filter(({ kind }) => kind !== 'text');
  const atoms = explode(drawn, { origin, scale });
  return { atoms: atoms.filter((atom) => atom.do !== 'text') };
};
