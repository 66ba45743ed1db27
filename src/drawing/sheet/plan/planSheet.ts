import type { Layout } from '../../../engine/layout.ts';
import type { Site } from '../../../site/site.ts';
import type { Atom } from '../../atom.ts';
import { moveAtoms } from '../../moveAtoms.ts';
import type { DrawnLayer } from '../../drawOnPaper.ts';
import { planLayers } from '../../plan/drawPlan.ts';
import { textWidth } from '../../textWidth.ts';
import { letters } from '../letters.ts';
import type { Rect } from '../rect.ts';
import type { Scale } from '../scales.ts';
import { legend } from './legend.ts';
import { planFoot, scaledPlan, scaleFor, type PlanPlace, type ScaledPlan } from './scaledPlan.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** Room round the ground for chains of dimensions, and over and under the key. */
const forChains = 0.85;
const beforeKey = 0.05;

const rules = [
  phrase`Chains run from centre to centre of posts;`,
  phrase`openings are clear, from inside face to inside face.`,
] as const;

/** What the numbers mean, in one line or two. */
const says = (room: number): readonly string[] =>
  textWidth(rules.join(' '), letters.small, 'regular') <= room ? [rules.join(' ')] : rules;

/** The part of a sheet's content that the ground is drawn in: the key and the foot lie under it. */
const placeIn = (
  site: Site,
  layout: Layout,
  content: Rect,
  drawn: readonly DrawnLayer[],
): PlanPlace => {
  const key = legend(site, layout, content.width, layout.flags.length > 0 ? 1 : null);
  return {
    drawn,
    system: site.lengths.system,
    window: { ...content, height: content.height - planFoot - key.height - 2 * beforeKey },
    clear: forChains,
  };
};

/** The plan of a site as sheets print it, on the ground. */
export const printedPlan = (site: Site, layout: Layout): readonly DrawnLayer[] =>
  planLayers(site, layout, { tapes: 'printed' });

/**
 * The plan of a site (`drawn`) in the content of a sheet, on graph paper, to the largest standard scale that
 * fits; ground that none fits is drawn to the smallest and cut off at the edge. The key to its signs
 * is `planKey`.
 */
export const planSheet = (
  site: Site,
  layout: Layout,
  content: Rect,
  drawn: readonly DrawnLayer[],
): ScaledPlan => scaledPlan(placeIn(site, layout, content, drawn), says);

/** The scale that a plan (`drawn`) would come to in a content of a sheet. */
export const planScale = (
  site: Site,
  layout: Layout,
  content: Rect,
  drawn: readonly DrawnLayer[],
): Scale => scaleFor(placeIn(site, layout, content, drawn));

/**
 * The key to the signs of a plan, at the foot of the content of its sheet. `flagSheet` is the
 * number of the sheet that lists the flags; null where there are none.
 */
export const planKey = (
  site: Site,
  layout: Layout,
  content: Rect,
  flagSheet: number | null,
): Atom[] => {
  const { atoms, height } = legend(site, layout, content.width, flagSheet);
  return moveAtoms(atoms, content.x, content.y + content.height - height - beforeKey);
};
