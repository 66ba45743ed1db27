import { heightLimitOf } from '../../engine/checks/heightLimitOf.ts';
import { slopeAt } from '../../engine/ground/gradeLine.ts';
import type { Run } from '../../engine/layout.ts';
import { trackInside } from '../../geometry/trackInside.ts';
import type { Feature } from '../../site/feature.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { pathPoints } from '../plan/pathPoints.ts';
import type { ClosedSpan } from './closedSpans.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * Where a run passes through ground with a height limit, named by the limit that holds for its build;
 * stations of the tape, in no order. A run whose line has no spec has none.
 */
export const heightSpans = (run: Run, site: Site): readonly ClosedSpan[] => {
  const spec = site.specs[site.lines[run.line]?.spec ?? 'spec:'];
  if (spec === undefined) return [];
  const onTape = (at: number): Inches =>
    run.ground === null ? inches(at) : slopeAt(run.ground.grade, inches(at));
  return Object.values<Feature>(site.features).flatMap((feature) => {
    if (feature.kind !== 'height zone') return [];
    const { limit } = heightLimitOf(feature, spec);
    const name = phrase`UP TO ${formatLength(limit, fineStyle(site.lengths))} HIGH`;
    return trackInside(run, pathPoints(site, feature.path)).map(({ from, to }): ClosedSpan => ({
      name,
      ink: 'height zone',
      hatch: 'level',
      from: onTape(from),
      to: onTape(to),
    }));
  });
};
