import { isMetric } from '../../units/isMetric.ts';
import { laid, usualPaper } from '../../drawing/sheet/papers.ts';
import { smallestLegible } from '../../drawing/sheet/plan/smallestLegible.ts';
import { planScale, printedPlan } from '../../drawing/sheet/plan/planSheet.ts';
import { sheetFrame } from '../../drawing/sheet/sheetFrame.ts';
import type { Layout } from '../../engine/layout.ts';
import type { Site } from '../../site/site.ts';

/** What an inch of the ground and an inch of the paper come to in a DXF. */
export interface DxfScale {
  readonly unit: 'inches' | 'millimetres';
  /** Units of the file in an inch: of the ground, and of lettering. */
  readonly each: number;
  /** Ground inches to an inch of the paper that lettering and dashes suit. */
  readonly ratio: number;
  /** How high capitals are, ground inches. */
  readonly letter: number;
}

/** Capitals on paper: the least that drafting standards allow (US National CAD Standard, from memory). */
const capitals = 3 / 32;

/**
 * How a site is written: at its true size in inches, or millimetres where its lengths are metric, as
 * people with CAD expect it. Lettering suits the scale that its plan has on a Letter or A4 sheet, of a long
 * yard a larger one.
 */
export const dxfScale = (site: Site, layout: Layout): DxfScale => {
  const { system } = site.lengths;
  const metric = isMetric(system);
  const drawn = printedPlan(site, layout);
  // longer yards are read on more than one sheet
  const ratio = Math.min(
    smallestLegible(system),
    ...(['portrait', 'landscape'] as const).map((way) => {
      const { content } = sheetFrame(laid(usualPaper(system), way));
      return planScale(site, layout, content, drawn).ratio;
    }),
  );
  const unit = metric ? ('millimetres' as const) : ('inches' as const);
  return { unit, each: metric ? 25.4 : 1, ratio, letter: capitals * ratio };
};
