import { lyingTapes, type LyingTape } from '../../engine/survey/lyingTapes.ts';
import { figureOf } from '../../engine/survey/figureOf.ts';
import type { Layout } from '../../engine/layout.ts';
import { bearing } from '../../geometry/bearing.ts';
import { lerp } from '../../geometry/lerp.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import type { PenName } from '../pens.ts';
import type { Primitive } from '../primitive.ts';

/** A tape with what it reads; in the ink of a stop where it is most likely wrong. */
const drawTape = (site: Site, { start, end, seen, along }: LyingTape, wrong: boolean) => {
  if (along && !wrong) return [];
  const reads = figureOf(seen, site.lengths);
  const drawn: Primitive[] = [
    { kind: 'polyline', points: [start, end], closed: false, pen: wrong ? 'stop' : 'tape' },
    {
      kind: 'text',
      // two diagonals meet in the middle
      at: lerp(start, end, 0.4),
      text: wrong ? `${reads}?` : reads,
      size: 0.135,
      rise: 0.05,
      angle: bearing(start, end),
      ink: wrong ? 'stop' : 'dimension',
      weight: wrong ? 'bold' : 'regular',
      name: `tape ${reads}`,
    },
  ];
  return drawn;
};

const ring = (site: Site, id: MarkId, { least, pen }: { least: number; pen: PenName }) => {
  const centre = site.marks[id];
  const drawn: Primitive[] =
    centre === undefined ? [] : [{ kind: 'circle', centre, radius: 0, least, pen, ink: null }];
  return drawn;
};

/**
 * What was taped, over the plan of a pad: tapes across open ground and square off lines with what they
 * read, the readings that are most likely wrong, broken rings round marks that nothing holds and full
 * ones round fixed marks.
 */
export const drawSurvey = (site: Site, { survey }: Layout): readonly Primitive[] => {
  const wrong = new Set(survey.suspects.flatMap(({ ids }) => ids));
  const loose = survey.stands === 'sketched' || survey.stands === 'large' ? [] : survey.loose;
  const fixed = (Object.keys(site.marks) as MarkId[]).filter((id) => site.marks[id]?.fixed);
  return [
    ...lyingTapes(site).flatMap((one) => drawTape(site, one, wrong.has(one.id))),
    ...loose.flatMap((id) => ring(site, id, { least: 0.14, pen: 'loose' })),
    ...fixed.flatMap((id) => ring(site, id, { least: 0.1, pen: 'fixed' })),
  ];
};
