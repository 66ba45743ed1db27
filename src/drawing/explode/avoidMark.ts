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
import { clippedSegment } from './clippedSegment.ts';
import { flagSize } from './flagAtoms.ts';

/** Lines are kept clear piece by piece, no longer than this, paper inches. */
const longest = 1;
/** A line that runs on for ever is kept clear in no more pieces than this. */
const mostPieces = 400;

const upright = radians(0);

const avoidSegment = (room: Lettering, a: PaperPoint, b: PaperPoint): void => {
  const count = Math.min(mostPieces, Math.ceil(distance(a, b) / longest));
  for (let n = 0; n < count; n++) {
    const [from, to] = [lerp(a, b, n / count), lerp(a, b, (n + 1) / count)];
    room.avoid({
      centre: midpoint(from, to),
      halfWidth: distance(from, to) / 2,
      halfHeight: 0.01,
      angle: bearing(from, to),
    });
  }
};

/** Keeps letters off lines through points on the paper, as far as there is other room. */
export const avoidLine = (
  room: Lettering,
  points: readonly PaperPoint[],
  window: Bounds | null,
): void => {
  points.slice(1).forEach((to, n) => {
    const seen = clippedSegment(points[n] ?? to, to, window);
    if (seen !== null) avoidSegment(room, ...seen);
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
      avoidLine(room, primitive.closed ? [...points, ...points.slice(0, 1)] : points, window);
      return;
    }
    case 'circle': {
      const radius = Math.max(primitive.radius * projection.scale, primitive.least);
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
