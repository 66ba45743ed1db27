import { distance } from '../geometry/distance.ts';
import { dot } from '../geometry/dot.ts';
import { perpendicular } from '../geometry/perpendicular.ts';
import { scale } from '../geometry/scale.ts';
import { subtract } from '../geometry/subtract.ts';
import { trackBearing, trackLength } from '../geometry/track.ts';
import { unitVector } from '../geometry/unitVector.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { Site } from '../site/site.ts';
import { inches } from '../units/inches.ts';
import type { Aim } from './aim.ts';
import { direction } from './direction.ts';
import { edgesOf, type Edge } from './edges.ts';
import { ofGround, type Ground } from './ground.ts';
import { edgesNear } from './near/edgesNear.ts';
import { remembered } from './near/remembered.ts';
import { lineKinds, onLine } from './snapLine.ts';
import type { SnapLine } from './snapLine.ts';
import { phrase } from '../phrases/phrase.ts';
import { theThing } from './theThing.ts';

/** An extension line is offered this far beyond the end that it starts from: 50 ft. */
const farthestExtension = 600;

const throughStart = (from: SitePoint, last: SnapLine['way'] | null, walls: readonly Edge[]) => {
  const line = (kind: SnapLine['kind'], way: SitePoint, label: string): SnapLine => ({
    kind,
    origin: from,
    way,
    label,
  });
  const ofWalls = walls.flatMap(({ start, end }) => {
    const way = unitVector(start, end);
    if (way === null) return [];
    return [
      line('parallel', way, phrase`parallel to the wall`),
      line('parallel', perpendicular(way), phrase`square to the wall`),
    ];
  });
  const ofLast =
    last === null
      ? []
      : [
          line('square', perpendicular(last), phrase`square to the last leg`),
          line('extension', last, phrase`straight on`),
        ];
  return [
    ...ofLast,
    ...ofWalls,
    line('compass', { x: 1, y: 0 }, phrase`east and west`),
    line('compass', { x: 0, y: 1 }, phrase`north and south`),
  ];
};

/** The two lines on beyond the ends of an edge, from a curve as it runs there; none without length. */
const beyond = (edge: Edge): SnapLine[] => {
  const { start, end, of, bow } = edge;
  const chord = unitVector(start, end);
  if (chord === null) return [];
  const wayAt = (along: number): SitePoint =>
    bow === 0 ? chord : direction(trackBearing(edge, along));
  const label =
    of.kind === 'leg'
      ? phrase`in line with the fence`
      : phrase`in line with the ${theThing[of.as]}`;
  return [
    { kind: 'extension', origin: start, way: scale(wayAt(0), -1), label },
    { kind: 'extension', origin: end, way: wayAt(bow === 0 ? 0 : trackLength(edge)), label },
  ];
};

/** The sides of the buildings of a site. */
const wallsOf = remembered((site: Site) =>
  edgesOf(site).filter(({ of }) => of.kind === 'side' && of.as === 'building'),
);

/**
 * The lines that pass within reach of the hand: through the start of the piece being drawn, and
 * on from the ends of legs and sides, and those asked for. The strongest sort first, the nearest first among one sort.
 */
export const snapLines = (aim: Aim, ground: Ground): SnapLine[] => {
  const { at, from, last, reach, also } = aim;
  const walls = from === null ? [] : ofGround(ground, wallsOf(ground.site));
  const own =
    from === null ? [] : throughStart(from, last === null ? null : direction(last), walls);
  const ends = { at, reach: inches(farthestExtension + reach) };
  const edges = ofGround(ground, edgesNear(ground.site, ends));
  const others = edges.flatMap(beyond).filter(({ origin, way }) => {
    const past = dot(subtract(at, origin), way);
    return past > 0 && past <= farthestExtension;
  });
  const away = (line: SnapLine): number => distance(at, onLine(line, at));
  const rank = ({ kind }: SnapLine): number => lineKinds.indexOf(kind);
  return [...own, ...also, ...others]
    .filter((line) => away(line) <= reach)
    .sort((a, b) => rank(a) - rank(b) || away(a) - away(b));
};
