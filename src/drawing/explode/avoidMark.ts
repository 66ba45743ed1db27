import { expandBounds, type Bounds } from '../../geometry/bounds.ts';
import { bearing } from '../../geometry/bearing.ts';
import { distance } from '../../geometry/distance.ts';
import { lerp } from '../../geometry/lerp.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import { moved } from '../../geometry/moved.ts';
import type { PaperPoint, SitePoint } from '../../geometry/point.ts';
import { radians } from '../../units/radians.ts';
import type { Lettering } from '../lettering/lettering.ts';
import { weightOf, type Weight } from '../lettering/weight.ts';
import type { Primitive } from '../primitive.ts';
import { toPaper, type Projection } from '../projection.ts';
import { radiusOnPaper } from './radiusOnPaper.ts';
import { signHalf } from './signAtoms.ts';
import { signOnPaper } from './signOnPaper.ts';
import { clippedSegment } from './clippedSegment.ts';
import { flagSize } from './flagAtoms.ts';

/** Half the strip that is kept clear along a line, and along a fence with its x marks; paper inches. */
const besideLine = 0.02;
const besideFence = 0.05;
/** The same round posts and signs: half of the widest pen and a hair. */
const besideRound = 0.012;
/** Lines are kept clear piece by piece, no longer than this, paper inches. */
const longest = 1;
/** A line that runs on for ever is kept clear in no more pieces than this. */
const mostPieces = 400;
/** A swing is kept clear as a line through points no farther apart than this, radians. */
const pieceOfTurn = Math.PI / 12;

const upright = radians(0);

type Arc = Extract<Primitive, { kind: 'arc' }>;

interface AvoidedLine {
  readonly points: readonly PaperPoint[];
  readonly window: Bounds | null;
  readonly beside: number;
  readonly weight?: Weight;
}

const avoidSegment = (
  room: Lettering,
  [a, b]: readonly [PaperPoint, PaperPoint],
  { beside, weight = 'thin' }: AvoidedLine,
): void => {
  const count = Math.min(mostPieces, Math.ceil(distance(a, b) / longest));
  for (let n = 0; n < count; n++) {
    const [from, to] = [lerp(a, b, n / count), lerp(a, b, (n + 1) / count)];
    const centre = midpoint(from, to);
    const halfWidth = distance(from, to) / 2;
    room.avoid({ centre, halfWidth, halfHeight: beside, angle: bearing(from, to) }, weight);
  }
};

const avoidLine = (room: Lettering, line: AvoidedLine): void => {
  const { points, window, beside } = line;
  // the signs of a fence that runs just outside reach in
  const near = window === null ? null : expandBounds(window, beside);
  points.slice(1).forEach((to, n) => {
    const seen = clippedSegment(points[n] ?? to, to, near);
    if (seen !== null) avoidSegment(room, seen, line);
  });
};

/** Points along a swing, near enough to one another for the line through them. */
const arcPoints = ({ centre, radius, start, sweep }: Arc): SitePoint[] => {
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / pieceOfTurn));
  return Array.from({ length: count + 1 }, (_, n) =>
    moved(centre, radians(start + (sweep * n) / count), radius),
  );
};

const avoidRound = (
  room: Lettering,
  centre: PaperPoint,
  { radius, weight }: { readonly radius: number; readonly weight: Weight },
): void => {
  const half = radius + besideRound;
  room.avoid({ centre, halfWidth: half, halfHeight: half, angle: upright }, weight);
};

/**
 * Keeps letters off what a primitive draws: lines and posts as far as there is other room, flags
 * always. Hatching and colour may be lettered over, and so may large circles and
 * contours.
 */
export const avoidMark = (
  room: Lettering,
  primitive: Primitive,
  projection: Projection,
  window: Bounds | null,
): void => {
  switch (primitive.kind) {
    case 'polyline':
    case 'fence': {
      // thin lines that lie under everything: a name may lie on them
      if (primitive.pen === 'contour') return;
      const points = primitive.points.map((point) => toPaper(projection, point));
      avoidLine(room, {
        points: primitive.closed ? [...points, ...points.slice(0, 1)] : points,
        window,
        beside: primitive.kind === 'fence' ? besideFence : besideLine,
        weight: weightOf(primitive.pen),
      });
      return;
    }
    case 'arc': {
      const points = arcPoints(primitive).map((point) => toPaper(projection, point));
      avoidLine(room, { points, window, beside: besideLine, weight: weightOf(primitive.pen) });
      return;
    }
    case 'circle': {
      // faint, and round what has a name
      if (primitive.pen === 'accuracy') return;
      const radius = radiusOnPaper(primitive, projection);
      const weight = primitive.pen === 'tree' ? 'thin' : 'solid';
      if (radius < longest)
        avoidRound(room, toPaper(projection, primitive.centre), { radius, weight });
      return;
    }
    case 'sign':
      avoidRound(room, signOnPaper(primitive, projection), { radius: signHalf, weight: 'solid' });
      return;
    case 'flag': {
      const at = toPaper(projection, primitive.at);
      const { staff, cloth } = flagSize;
      room.take({
        centre: { x: at.x + cloth / 2, y: at.y - staff / 2 },
        halfWidth: cloth / 2 + 0.02,
        halfHeight: staff / 2 + 0.02,
        angle: upright,
      });
      return;
    }
    case 'area':
    case 'text':
    case 'bubble':
    case 'dimension chain':
      return;
  }
};
