import type { Bounds } from '../../geometry/bounds.ts';
import { bearing } from '../../geometry/bearing.ts';
import { distance } from '../../geometry/distance.ts';
import { lerp } from '../../geometry/lerp.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { radians } from '../../units/radians.ts';
import type { Lettering } from '../lettering/lettering.ts';
import type { Primitive } from '../primitive.ts';
import { toPaper, type Projection } from '../projection.ts';
import { radiusOnPaper } from './radiusOnPaper.ts';
import { clippedSegment } from './clippedSegment.ts';
import { flagSize } from './flagAtoms.ts';

/** Half the strip that is kept clear along a line, and along a fence with its x marks; paper inches. */
const besideLine = 0.02;
const besideFence = 0.05;
/** Lines are kept clear piece by piece, no longer than this, paper inches. */
const longest = 1;
/** A line that runs on for ever is kept clear in no more pieces than this. */
const mostPieces = 400;

const upright = radians(0);

interface AvoidedLine {
  readonly points: readonly PaperPoint[];
  readonly window: Bounds | null;
  readonly beside: number;
}

const avoidSegment = (
  room: Lettering,
  [a, b]: readonly [PaperPoint, PaperPoint],
  halfHeight: number,
): void => {
  const count = Math.min(mostPieces, Math.ceil(distance(a, b) / longest));
  for (let n = 0; n < count; n++) {
    const [from, to] = [lerp(a, b, n / count), lerp(a, b, (n + 1) / count)];
    room.avoid({
      centre: midpoint(from, to),
      halfWidth: distance(from, to) / 2,
      halfHeight,
      angle: bearing(from, to),
    });
  }
};

const avoidLine = (room: Lettering, { points, window, beside }: AvoidedLine): void => {
  points.slice(1).forEach((to, n) => {
    const seen = clippedSegment(points[n] ?? to, to, window);
    if (seen !== null) avoidSegment(room, seen, beside);
  });
};

const avoidRound = (room: Lettering, centre: PaperPoint, radius: number): void =>
  room.avoid({ centre, halfWidth: radius, halfHeight: radius, angle: upright });

/**
 * Keeps letters off what a primitive draws: lines and posts as far as there is other room, flags
 * always. Hatching and colour may be lettered over, and so may large circles and swings.
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
      const points = primitive.points.map((point) => toPaper(projection, point));
      avoidLine(room, {
        points: primitive.closed ? [...points, ...points.slice(0, 1)] : points,
        window,
        beside: primitive.kind === 'fence' ? besideFence : besideLine,
      });
      return;
    }
    case 'circle': {
      const radius = radiusOnPaper(primitive, projection);
      if (radius < longest) avoidRound(room, toPaper(projection, primitive.centre), radius);
      return;
    }
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
    case 'arc':
    case 'area':
    case 'text':
    case 'dimension chain':
      return;
  }
};
