import type { Layout } from '../../engine/layout.ts';
import { bearing } from '../../geometry/bearing.ts';
import { lerp } from '../../geometry/lerp.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Feature } from '../../site/feature.ts';
import type { FenceLine } from '../../site/fenceLine.ts';
import type { MarkId, ObservationId } from '../../site/ids.ts';
import { legsOf } from '../../site/legsOf.ts';
import type { Observation, ObservationOf } from '../../site/observation.ts';
import { isClosed } from '../../site/pathFeature.ts';
import type { Site } from '../../site/site.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { Primitive } from '../primitive.ts';

const between = (a: MarkId, b: MarkId): string => (a < b ? `${a} ${b}` : `${b} ${a}`);

/** The pairs of marks that a leg or side runs between: what is taped there is drawn already. */
const drawnPairs = (site: Site): ReadonlySet<string> => {
  const legs = [
    ...Object.values<FenceLine>(site.lines).flatMap((line) => legsOf(line)),
    ...Object.values<Feature>(site.features).flatMap((feature) =>
      'path' in feature ? legsOf({ path: feature.path, closed: isClosed(feature) }) : [],
    ),
  ];
  return new Set(legs.map(({ start, end }) => between(start, end)));
};

/** A tape across open ground, with what it reads; in the ink of a stop where it is most likely wrong. */
const drawTape = (
  site: Site,
  tape: ObservationOf<'tape'>,
  { wrong, drawn }: { readonly wrong: boolean; readonly drawn: boolean },
): Primitive[] => {
  const [from, to] = [site.marks[tape.from], site.marks[tape.to]];
  if (from === undefined || to === undefined || (drawn && !wrong)) return [];
  const line = { kind: 'polyline', points: [from, to], closed: false } as const;
  const reads = formatLength(inches(tape.length), site.lengths);
  return [
    { ...line, pen: wrong ? 'stop' : 'tape' },
    {
      kind: 'text',
      // two diagonals meet in the middle
      at: lerp(from, to, 0.4),
      text: wrong ? `${reads}?` : reads,
      size: 0.135,
      rise: 0.05,
      angle: bearing(from, to),
      ink: wrong ? 'stop' : 'dimension',
      weight: wrong ? 'bold' : 'regular',
      name: `tape ${reads}`,
    },
  ];
};

/** A reading square off a line, from its mark to that line. */
const drawOffset = (
  site: Site,
  { at, from, to }: ObservationOf<'offset'>,
  wrong: boolean,
): Primitive[] => {
  const [here, start, end] = [site.marks[at], site.marks[from], site.marks[to]];
  if (here === undefined || start === undefined || end === undefined) return [];
  const way = { x: end.x - start.x, y: end.y - start.y };
  const square = way.x * way.x + way.y * way.y;
  if (square === 0) return [];
  const share = ((here.x - start.x) * way.x + (here.y - start.y) * way.y) / square;
  const foot: SitePoint = lerp<'site'>(start, end, share);
  return [
    { kind: 'polyline', points: [here, foot], closed: false, pen: wrong ? 'stop' : 'tape' },
    ...(share < 0 || share > 1
      ? [
          {
            kind: 'polyline',
            points: [midpoint<'site'>(start, end), foot],
            closed: false,
            pen: 'guide',
          } as const,
        ]
      : []),
  ];
};

/** A mark that nothing holds: a broken ring round it. */
const drawLoose = (site: Site, id: MarkId): Primitive[] => {
  const mark = site.marks[id];
  if (mark === undefined) return [];
  return [{ kind: 'circle', centre: mark, radius: 0, least: 0.14, pen: 'loose', ink: null }];
};

/** A mark that nothing moves: a full ring round it. */
const drawFixed = (site: Site, id: MarkId): Primitive[] => {
  const mark = site.marks[id];
  if (mark === undefined || !mark.fixed) return [];
  return [{ kind: 'circle', centre: mark, radius: 0, least: 0.1, pen: 'tape fixed', ink: null }];
};

/**
 * What was taped, over the plan of a pad: tapes across open ground with what they read, the readings that are most
 * likely wrong, broken rings round loose marks and full ones round fixed marks.
 */
export const drawSurvey = (site: Site, { survey }: Layout): readonly Primitive[] => {
  const wrong = new Set<ObservationId>(survey.suspects.flatMap(({ ids }) => ids));
  const pairs = drawnPairs(site);
  const seen = (Object.entries(site.observations) as [ObservationId, Observation][]).flatMap(
    ([id, one]): Primitive[] => {
      if (one.kind === 'offset') return drawOffset(site, one, wrong.has(id));
      if (one.kind !== 'tape') return [];
      const drawn = pairs.has(between(one.from, one.to));
      return drawTape(site, one, { wrong: wrong.has(id), drawn });
    },
  );
  const loose = survey.stands === 'sketched' ? [] : survey.loose;
  const fixed = Object.keys(site.marks) as MarkId[];
  return [
    ...seen,
    ...loose.flatMap((id) => drawLoose(site, id)),
    ...fixed.flatMap((id) => drawFixed(site, id)),
  ];
};
