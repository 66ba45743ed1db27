import { lyingTapes, type LyingTape } from '../../engine/survey/lyingTapes.ts';
import { figureOf } from '../../engine/survey/figureOf.ts';
import type { Layout } from '../../engine/layout.ts';
import { bearing } from '../../geometry/bearing.ts';
import { lerp } from '../../geometry/lerp.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import type { PenName } from '../pens.ts';
import type { Primitive } from '../primitive.ts';
import { phrase } from '../../phrases/phrase.ts';

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
      size: 0.141,
      rise: 0.05,
      angle: bearing(start, end),
      ink: wrong ? 'stop' : 'dimension',
      weight: wrong ? 'bold' : 'regular',
      name: phrase`tape ${reads}`,
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

/** How far the way is drawn that a mark may still give, inches on the ground to either side. Ours. */
const giveDrawn = 36;

/** The one way that a loose mark may still give; nothing where it may give every way. */
const give = (site: Site, id: MarkId, ways: readonly SitePoint[]): Primitive[] => {
  const at = site.marks[id];
  const [way, other] = ways;
  if (at === undefined || way === undefined || other !== undefined) return [];
  const points = [-giveDrawn, giveDrawn].map((by) => ({
    x: at.x + by * way.x,
    y: at.y + by * way.y,
  }));
  return [{ kind: 'polyline', points, closed: false, pen: 'loose' }];
};

/**
 * What was taped, over the plan of a pad: tapes across open ground and square off lines with what they
 * read, the readings that are most likely wrong, broken rings round marks that nothing holds with
 * the way they may give where it is only one, and full rings round fixed marks.
 */
export const drawSurvey = (site: Site, { survey }: Layout): readonly Primitive[] => {
  const wrong = new Set(survey.suspects.flatMap(({ ids }) => ids));
  const loose = survey.stands === 'sketched' || survey.stands === 'large' ? [] : survey.loose;
  const fixed = (Object.keys(site.marks) as MarkId[]).filter((id) => site.marks[id]?.fixed);
  return [
    ...lyingTapes(site).flatMap((one) => drawTape(site, one, wrong.has(one.id))),
    ...loose.flatMap((id) => ring(site, id, { least: 0.14, pen: 'loose' })),
    ...loose.flatMap((id) => give(site, id, survey.ways[id] ?? [])),
    ...fixed.flatMap((id) => ring(site, id, { least: 0.1, pen: 'fixed' })),
  ];
};
