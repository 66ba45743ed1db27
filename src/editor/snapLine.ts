import { add } from '../geometry/add.ts';
import { bearing } from '../geometry/bearing.ts';
import { distance } from '../geometry/distance.ts';
import { dot } from '../geometry/dot.ts';
import { perpendicular } from '../geometry/perpendicular.ts';
import { scale } from '../geometry/scale.ts';
import { subtract } from '../geometry/subtract.ts';
import { unitVector } from '../geometry/unitVector.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { Aim } from './aim.ts';
import { direction } from './direction.ts';
import type { Edge } from './edges.ts';

/** The sorts of line that a point is drawn onto, the strongest first. */
export const lineKinds = ['square', 'parallel', 'extension', 'compass'] as const;

/** An endless line that a point can be drawn onto: where it starts, a vector of length 1. */
export interface SnapLine {
  readonly kind: (typeof lineKinds)[number];
  readonly origin: SitePoint;
  readonly way: SitePoint;
  /** What the hand is told, such as `square to the last leg`. */
  readonly label: string;
}

/** An extension line is offered this far beyond the end that it starts from: 50 ft. */
const farthestExtension = 600;

/** The foot of a point on a line, in inches on the ground. */
export const onLine = ({ origin, way }: SnapLine, at: SitePoint): SitePoint =>
  add(origin, scale(way, dot(subtract(at, origin), way)));

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
      line('parallel', way, 'parallel to the wall'),
      line('parallel', perpendicular(way), 'square to the wall'),
    ];
  });
  const ofLast =
    last === null
      ? []
      : [
          line('square', perpendicular(last), 'square to the last leg'),
          line('extension', last, 'straight on'),
        ];
  const east = direction(bearing({ x: 0, y: 0 }, { x: 1, y: 0 }));
  return [
    ...ofLast,
    ...ofWalls,
    line('compass', east, 'east and west'),
    line('compass', perpendicular(east), 'north and south'),
  ];
};

/** The two lines on beyond the ends of an edge; none for an edge without length. */
const beyond = ({ start, end, of }: Edge): SnapLine[] => {
  const way = unitVector(start, end);
  if (way === null) return [];
  const label = of.kind === 'leg' ? 'in line with the fence' : `in line with the ${of.as}`;
  return [
    { kind: 'extension', origin: start, way: scale(way, -1), label },
    { kind: 'extension', origin: end, way, label },
  ];
};

/**
 * The lines that pass within reach of the hand: through the start of the piece being drawn, and
 * on from the ends of legs and sides. The strongest sort first, the nearest first among one sort.
 */
export const snapLines = (aim: Aim, edges: readonly Edge[]): SnapLine[] => {
  const { at, from, last, reach } = aim;
  const walls = edges.filter(({ of }) => of.kind === 'side' && of.as === 'building');
  const own =
    from === null ? [] : throughStart(from, last === null ? null : direction(last), walls);
  const others = edges.flatMap(beyond).filter(({ origin, way }) => {
    const past = dot(subtract(at, origin), way);
    return past > 0 && past <= farthestExtension;
  });
  const away = (line: SnapLine): number => distance(at, onLine(line, at));
  const rank = ({ kind }: SnapLine): number => lineKinds.indexOf(kind);
  return [...own, ...others]
    .filter((line) => away(line) <= reach)
    .sort((a, b) => rank(a) - rank(b) || away(a) - away(b));
};
