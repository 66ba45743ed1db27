import { bearing } from '../../geometry/bearing.ts';
import type { Bounds } from '../../geometry/bounds.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { segmentInBox } from '../../geometry/segmentInBox.ts';
import type { Gate } from '../../site/gate.ts';
import { pullRoom, pushRoom, pushRoomWithCloser, type LatchRoom } from '../../trade/latchRoom.ts';
import { inches } from '../../units/inches.ts';
import type { GateLayout, Layout } from '../layout.ts';
import type { Met, Obstacle } from './obstacle.ts';

/**
 * The ground on one side of a gate of one leaf on which somebody in a wheelchair opens it. Its `box` is
 * in inches from the hinge side of the opening: x towards the latch, y away from the fence, from the face
 * of the posts.
 */
export interface GroundAtLatch {
  readonly side: 'pull' | 'push';
  readonly asked: LatchRoom;
  readonly box: Bounds;
  /** A place of the box on the site, and the other way. */
  readonly onSite: (at: { readonly x: number; readonly y: number }) => SitePoint;
  readonly inBox: (at: SitePoint) => { readonly x: number; readonly y: number };
}

const sides = ['pull', 'push'] as const;

const askedOn = (side: (typeof sides)[number], { closer }: Pick<Gate, 'closer'>): LatchRoom => {
  if (side === 'pull') return pullRoom;
  return closer === null ? pushRoom : pushRoomWithCloser;
};

/** Both sides of a gate of one leaf that turns and is placed; none of any other gate. */
export const latchRooms = (
  gate: Pick<Gate, 'closer' | 'hingedAt'>,
  laid: GateLayout,
  posts: Layout['posts'],
): readonly GroundAtLatch[] => {
  const [leaf, ...others] = laid.leaves;
  if (leaf === undefined || others.length > 0 || laid.posts === null) return [];
  const atStart = gate.hingedAt === 'start';
  const hinged = posts.get(atStart ? laid.posts.start : laid.posts.end);
  const latched = posts.get(atStart ? laid.posts.end : laid.posts.start);
  if (hinged === undefined || latched === undefined) return [];
  const way = bearing(hinged.at, latched.at);
  const [cos, sin] = [Math.cos(way), Math.sin(way)];
  const face = Math.max(hinged.od, latched.od) / 2;
  return sides.map((side): GroundAtLatch => {
    // above zero a leaf turns to the left
    const left = leaf.turns > 0 === (side === 'pull') ? 1 : -1;
    const asked = askedOn(side, gate);
    const start = hinged.od / 2;
    return {
      side,
      asked,
      box: { minX: 0, minY: face, maxX: laid.stands + asked.beyond, maxY: asked.deep },
      onSite: ({ x, y }) => ({
        x: hinged.at.x + (start + x) * cos - left * y * sin,
        y: hinged.at.y + (start + x) * sin + left * y * cos,
      }),
      inBox: ({ x, y }) => {
        const [dx, dy] = [x - hinged.at.x, y - hinged.at.y];
        return { x: dx * cos + dy * sin - start, y: left * (dy * cos - dx * sin) };
      },
    };
  });
};

const blocks: readonly Met['kind'][] = ['building', 'tree', 'fence', 'pool'];

const reachesIn = ({ box, inBox }: GroundAtLatch, { edges, disc }: Obstacle): boolean => {
  if (edges.some(({ start, end }) => segmentInBox({ start: inBox(start), end: inBox(end) }, box))) {
    return true;
  }
  if (disc === null) return false;
  const { x, y } = inBox(disc.centre);
  const [dx, dy] = [
    x - Math.min(Math.max(x, box.minX), box.maxX),
    y - Math.min(Math.max(y, box.minY), box.maxY),
  ];
  return Math.hypot(dx, dy) < disc.radius;
};

/** What stands on that ground: walls, trunks, other fence and the edges of pools. */
export const standingIn = (room: GroundAtLatch, around: readonly Obstacle[]): readonly Met[] =>
  around
    .filter((obstacle) => blocks.includes(obstacle.met.kind) && reachesIn(room, obstacle))
    .map(({ met }) => met);

/** Places all over that ground, three along and three out, on the site. */
export const placesOn = ({ box, onSite }: GroundAtLatch): readonly SitePoint[] =>
  [0, 1 / 2, 1].flatMap((along) =>
    [0, 1 / 2, 1].map((out) =>
      onSite({
        x: inches(box.minX + along * (box.maxX - box.minX)),
        y: inches(box.minY + out * (box.maxY - box.minY)),
      }),
    ),
  );
