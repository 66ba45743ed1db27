import { add } from '../geometry/add.ts';
import { distance } from '../geometry/distance.ts';
import { dot } from '../geometry/dot.ts';
import { lineIntersection } from '../geometry/lineIntersection.ts';
import { scale } from '../geometry/scale.ts';
import { segmentIntersection } from '../geometry/segmentIntersection.ts';
import { subtract } from '../geometry/subtract.ts';
import { spot } from '../geometry/tolerance.ts';
import { trackPoints } from '../geometry/track.ts';
import { unitVector } from '../geometry/unitVector.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { Site } from '../site/site.ts';
import type { Inches } from '../units/inches.ts';
import type { Aim } from './aim.ts';
import { direction } from './direction.ts';
import type { Edge } from './edges.ts';
import { edgeNear, footingIn, markNear, onEdge } from './ground.ts';
import type { Footing, Ground } from './ground.ts';
import { onLine } from './snapLine.ts';
import type { SnapLine } from './snapLine.ts';
import { snapLines } from './snapLines.ts';

/** Where the hand means, when it points about there. */
export interface Snap {
  readonly point: SitePoint;
  readonly kind: 'free' | 'mark' | 'edge' | 'crossing' | 'line' | 'typed';
  /** Null on open ground. */
  readonly on: Footing | null;
  /** The lines that the point was drawn onto. */
  readonly lines: readonly SnapLine[];
}

/** A stretch of a line to both sides of a point, long enough to meet an edge within reach. */
const pieceOf = (line: SnapLine, about: SitePoint, reach: Inches) => {
  const foot = onLine(line, about);
  const by = scale(line.way, 4 * reach);
  return { start: subtract(foot, by), end: add(foot, by) };
};

/** Where a piece of a line meets a leg or side; on a curved leg the point of its arc. */
const meeting = (piece: ReturnType<typeof pieceOf>, edge: Edge): SitePoint | null => {
  if (edge.bow === 0) return segmentIntersection(piece, edge)?.point ?? null;
  const points = trackPoints(edge, spot);
  const found = points
    .slice(1)
    .flatMap((end, n) => segmentIntersection(piece, { start: points[n] ?? end, end })?.point ?? []);
  return found[0] === undefined ? null : onEdge(found[0], edge).point;
};

const edgeSnap = (ground: Ground, aim: Aim, lines: readonly SnapLine[]): Snap | null => {
  const found = edgeNear(ground, aim.at, aim.reach);
  if (found === null) return null;
  const { of } = found.edge;
  for (const line of lines) {
    const meets = meeting(pieceOf(line, aim.at, aim.reach), found.edge);
    if (meets !== null && distance(meets, aim.at) <= aim.reach) {
      return { point: meets, kind: 'crossing', on: of, lines: [line] };
    }
  }
  return { point: found.point, kind: 'edge', on: of, lines: [] };
};

const lineSnap = (aim: Aim, lines: readonly SnapLine[]): Snap | null => {
  const [first, ...others] = lines;
  if (first === undefined) return null;
  for (const other of others) {
    if (other.origin === first.origin) continue;
    const meets = lineIntersection(
      pieceOf(first, aim.at, aim.reach),
      pieceOf(other, aim.at, aim.reach),
    );
    if (meets !== null && distance(meets.point, aim.at) <= aim.reach) {
      return { point: meets.point, kind: 'crossing', on: null, lines: [first, other] };
    }
  }
  return { point: onLine(first, aim.at), kind: 'line', on: null, lines: [first] };
};

const untypedSnap = (ground: Ground, aim: Aim): Snap => {
  const free: Snap = { point: aim.at, kind: 'free', on: null, lines: [] };
  if (aim.free) return free;
  const mark = markNear(ground, aim.at, aim.reach);
  if (mark !== null) {
    return { point: mark.point, kind: 'mark', on: { kind: 'mark', id: mark.id }, lines: [] };
  }
  const lines = snapLines(aim, ground);
  return edgeSnap(ground, aim, lines) ?? lineSnap(aim, lines) ?? free;
};

/** The point that the typed length or bearing holds, and the lines that gave it its direction. */
const typedPoint = (from: SitePoint, ground: Ground, aim: Aim): Pick<Snap, 'point' | 'lines'> => {
  const { length, bearing } = aim.typed;
  if (bearing !== null) {
    const way = direction(bearing);
    const far = length ?? Math.max(0, dot(subtract(aim.at, from), way));
    return { point: add(from, scale(way, far)), lines: [] };
  }
  const { point, lines } = untypedSnap(ground, aim);
  const line = lines.find(({ origin }) => origin === from);
  // along a line its own direction is exact, the one to a point on it is rounded
  const ahead = line && Math.sign(dot(subtract(point, from), line.way));
  const way = ahead ? scale(line.way, ahead) : unitVector(from, point);
  return { point: add(from, scale(way ?? { x: 1, y: 0 }, length ?? 0)), lines };
};

/**
 * What the hand means: what was typed before all else, then marks, then legs and sides (where a
 * line crosses one, the crossing), then lines: square to the last leg, parallel or square to a
 * wall, on from a leg or side, along the compass. A typed point stands on what lies right there.
 */
export const snap = (site: Site, aim: Aim): Snap => {
  const ground: Ground = { site, except: aim.except };
  const { from, typed } = aim;
  if (from === null || (typed.length === null && typed.bearing === null)) {
    return untypedSnap(ground, aim);
  }
  const { point, lines } = typedPoint(from, ground, aim);
  if (aim.free) return { point, kind: 'typed', on: null, lines };
  return { point, kind: 'typed', on: footingIn(ground, point), lines };
};
