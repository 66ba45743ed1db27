import type { Layout } from '../../engine/layout.ts';
import type { Site } from '../../site/site.ts';
import { toNextTier } from '../lettering/chainLine.ts';
import type { Primitive } from '../primitive.ts';
import { padPlan } from './padPlan.ts';

/** A chain as the line of its total alone, where that stands when its pieces are written too. */
const asTotal = (primitive: Primitive): Primitive => {
  if (primitive.kind !== 'dimension chain') return primitive;
  const { points, texts, total, off, stretches } = primitive;
  const ends = [points[0], points.at(-1)].flatMap((point) => point ?? []);
  const tiers = (stretches === undefined ? 0 : 1) + (total === null ? 0 : 1);
  const out = Math.sign(off) * tiers * toNextTier;
  const { stretches: _, ...rest } = primitive;
  return {
    ...rest,
    points: ends,
    texts: [total ?? texts[0] ?? ''],
    total: null,
    off: off + out,
  };
};

/** A rough place must not make all else small. */
const isRough = (primitive: Primitive): boolean =>
  primitive.kind === 'circle' && primitive.pen === 'accuracy';

/**
 * What of a plan a view of all of it makes room for: the yard and the lines of its dimensions. The
 * names of gates and lengths that are led out find their places in whatever room there is.
 */
export const fitPlan = (site: Site, layout: Layout): readonly Primitive[] =>
  padPlan(site, layout, { omit: ['gate labels', 'flags'] })
    .filter((primitive) => !isRough(primitive))
    .map(asTotal);
