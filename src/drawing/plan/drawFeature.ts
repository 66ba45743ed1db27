import { bearing } from '../../geometry/bearing.ts';
import { centroid } from '../../geometry/centroid.ts';
import { distance } from '../../geometry/distance.ts';
import { lerp } from '../../geometry/lerp.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import { offsetPolyline } from '../../geometry/offsetPolyline.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Segment } from '../../geometry/segment.ts';
import type { Feature } from '../../site/feature.ts';
import type { Site } from '../../site/site.ts';
import { radians } from '../../units/radians.ts';
import type { Hatch } from '../hatch.ts';
import type { Ink } from '../ink.ts';
import { pens, type PenName } from '../pens.ts';
import type { OnLine, Primitive } from '../primitive.ts';
import { wrapText } from '../wrapText.ts';
import { edgeLabels } from './edgeLabels.ts';
import { heightLimitText } from './heightLimitText.ts';
import { pathPoints } from './pathPoints.ts';
import { phrase } from '../../phrases/phrase.ts';
import { heightZoneWords } from './heightZoneWords.ts';
import { serviceWords } from './serviceWords.ts';

type Of<Kind extends Feature['kind']> = Extract<Feature, { kind: Kind }>;
type AreaKind = 'building' | 'paving' | 'pool' | 'keep-out' | 'height zone';

/** How ground of each sort is filled and edged. */
const grounds: Readonly<
  Record<AreaKind, { ink: Ink; opacity: number; hatch: 'none' | Hatch; pen: PenName }>
> = {
  building: { ink: 'building', opacity: 0.07, hatch: 'diagonal', pen: 'building' },
  paving: { ink: 'paving', opacity: 0.13, hatch: 'none', pen: 'paving' },
  pool: { ink: 'water', opacity: 0.16, hatch: 'none', pen: 'pool' },
  'keep-out': { ink: 'keep-out', opacity: 0.05, hatch: 'cross', pen: 'keep-out' },
  'height zone': { ink: 'height zone', opacity: 0.06, hatch: 'level', pen: 'height zone' },
};

const name = (
  text: string,
  at: SitePoint | null | undefined,
  more: { ink: Ink } & Partial<Extract<Primitive, { kind: 'text' }>>,
): Primitive[] =>
  at === null || at === undefined || text.trim() === ''
    ? []
    : [
        {
          kind: 'text',
          at,
          text,
          size: 0.15,
          rise: 0,
          angle: radians(0),
          weight: 'regular',
          ...more,
        },
      ];

/** What ground is called on the drawing; of a height limit that too. */
const groundName = (feature: Of<AreaKind>, site: Site): string =>
  feature.kind === 'height zone'
    ? `${feature.label.trim() || heightZoneWords[feature.of]}\n${heightLimitText(feature, site.lengths)}`
    : feature.label;

const drawGround = (feature: Of<AreaKind>, site: Site): Primitive[] => {
  const points = pathPoints(site, feature.path);
  const { ink, opacity, hatch, pen } = grounds[feature.kind];
  return [
    { kind: 'area', points, ink, opacity, hatch },
    { kind: 'polyline', points, closed: true, pen },
    ...(feature.kind === 'building'
      ? edgeLabels(feature.label.trim() || phrase`building`, points, site.lengths)
      : []),
    ...name(groundName(feature, site), centroid(points), { ink, weight: 'bold' }),
  ];
};

const byLength = (points: readonly SitePoint[]): Segment<'site'>[] =>
  points
    .slice(1)
    .map((end, n) => ({ start: points[n] ?? end, end }))
    .toSorted((a, b) => distance(b.start, b.end) - distance(a.start, a.end));

/** A line may be broken for its name in the longest of its legs, in their middles or so far along. */
const legsTried = 6;
const sharesTried = [0.5, 0.3, 0.7, 0.15, 0.85] as const;

const onLegs = (legs: readonly Segment<'site'>[]): OnLine[] =>
  legs.slice(0, legsTried).flatMap(({ start, end }) =>
    sharesTried.map((share) => ({
      at: lerp(start, end, share),
      angle: bearing(start, end),
      // as much as lies to both sides of it
      long: 2 * distance(start, end) * Math.min(share, 1 - share),
    })),
  );

const along = (text: string, points: readonly SitePoint[], ink: Ink): Primitive[] => {
  const legs = byLength(points);
  const [leg] = legs;
  if (leg === undefined) return [];
  const angle = bearing(leg.start, leg.end);
  const on = onLegs(legs);
  return name(text, midpoint(leg.start, leg.end), { ink, angle, rise: 0.05, on });
};

const drawBoundary = (feature: Of<'boundary'>, site: Site): Primitive[] => {
  const points = pathPoints(site, feature.path);
  const { closed, label } = feature;
  return [
    { kind: 'polyline', points, closed, pen: 'boundary' },
    ...along(label, closed ? [...points, ...points.slice(0, 1)] : points, 'boundary'),
  ];
};

/** A utility, with the ground on both sides of a buried one in which no hole may be dug by machine. */
const drawUtility = (feature: Of<'utility'>, site: Site): Primitive[] => {
  const points = pathPoints(site, feature.path);
  const { service, label, run, width, tolerance } = feature;
  const reach = run === 'overhead' ? 0 : width / 2 + tolerance;
  const called = label.trim() === '' ? serviceWords[service] : label;
  const zone = [...offsetPolyline(points, reach), ...offsetPolyline(points, -reach).toReversed()];
  const { ink } = pens[service];
  return [
    ...(reach > 0
      ? [{ kind: 'area', points: zone, ink, opacity: 0.1, hatch: 'none' } as const]
      : []),
    { kind: 'polyline', points, closed: false, pen: service },
    ...along(run === 'overhead' ? phrase`${called}, overhead` : called, points, ink),
  ];
};

const drawTree = ({ mark, trunk, roots, label }: Of<'tree'>, site: Site): Primitive[] => {
  const centre = site.marks[mark];
  if (centre === undefined) return [];
  return [
    { kind: 'circle', centre, radius: roots, least: 0.08, pen: 'tree', ink: null },
    { kind: 'circle', centre, radius: trunk, least: 0.03, pen: null, ink: 'tree' },
    ...name(label, centre, { ink: 'tree', rise: 0.08 }),
  ];
};

/** Notes are cut on the drawing; sheets print them whole. Width of a line in paper inches. */
const noteSetting = { width: 1.9, size: 0.15, weight: 'regular' } as const;
const mostNoteLines = 4;

const drawNote = ({ mark, label, text }: Of<'note'>, site: Site): Primitive[] => {
  const at = site.marks[mark];
  if (at === undefined) return [];
  const lines = wrapText([label, text].filter((part) => part !== '').join('\n'), noteSetting);
  const more = lines.length > mostNoteLines ? ['…'] : [];
  const shown = [...lines.slice(0, mostNoteLines - more.length), ...more].join('\n');
  return [
    { kind: 'circle', centre: at, radius: 0, least: 0.025, pen: null, ink: 'text' },
    ...name(shown, at, { ink: 'text', rise: 0.08 }),
  ];
};

/** One thing of the yard that is neither fence nor gate. A path without points draws nothing. */
export const drawFeature = (feature: Feature, site: Site): readonly Primitive[] => {
  switch (feature.kind) {
    case 'building':
    case 'paving':
    case 'pool':
    case 'keep-out':
    case 'height zone':
      return drawGround(feature, site);
    case 'boundary':
      return drawBoundary(feature, site);
    case 'utility':
      return drawUtility(feature, site);
    case 'tree':
      return drawTree(feature, site);
    case 'note':
      return drawNote(feature, site);
  }
};
