import { laid } from '../../drawing/sheet/papers.ts';
import { planScale } from '../../drawing/sheet/plan/planSheet.ts';
import { sheetFrame } from '../../drawing/sheet/sheetFrame.ts';
import type { Layout } from '../../engine/layout.ts';
import type { Site } from '../../site/site.ts';
import type { LengthSystem } from '../../units/lengthStyle.ts';

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
 * The smallest scale that lettering suits, 1 in to 20 ft or 1 to 200: smaller, and the length of a usual
 * bay is wider than the bay. Longer yards are read on more than one sheet. Ours.
 */
const smallest = { imperial: 240, metric: 200 } as const;

const isMetric = (system: LengthSystem): boolean => system === 'mm' || system === 'm';

/**
 * How a site is written: at its true size in inches, or millimetres where its lengths are metric, as
 * people with CAD expect it. Lettering suits the scale that its plan has on a Letter or A4 sheet, of a long
 * yard a larger one.
 */
export const dxfScale = (site: Site, layout: Layout): DxfScale => {
  const metric = isMetric(site.lengths.system);
  const paper = metric ? 'a4' : 'letter';
  const ratio = Math.min(
    smallest[metric ? 'metric' : 'imperial'],
    ...(['portrait', 'landscape'] as const).map(
      (way) => planScale(site, layout, sheetFrame(laid(paper, way)).content).ratio,
    ),
  );
  const unit = metric ? ('millimetres' as const) : ('inches' as const);
  return { unit, each: metric ? 25.4 : 1, ratio, letter: capitals * ratio };
};
