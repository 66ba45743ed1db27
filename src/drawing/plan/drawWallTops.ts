import type { Layout, Leg } from '../../engine/layout.ts';
import { wallSteps } from '../../engine/wall/wallSteps.ts';
import { moved } from '../../geometry/moved.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { trackAt, trackBearing } from '../../geometry/track.ts';
import type { Site } from '../../site/site.ts';
import type { WallTop } from '../../site/wallTop.ts';
import { radians } from '../../units/radians.ts';
import type { Primitive } from '../primitive.ts';

/** A curved wall is drawn by so many straight pieces. */
const curvePieces = 24;

const drawTop = (leg: Leg, wall: WallTop): Primitive[] => {
  const beside = (along: number, side: 1 | -1): SitePoint => {
    const across = radians(trackBearing(leg, along) + Math.PI / 2);
    return moved(trackAt(leg, along), across, (side * wall.width) / 2);
  };
  const count = leg.bow === 0 ? 1 : curvePieces;
  const stations = Array.from({ length: count + 1 }, (_, n) => (n * leg.length) / count);
  const points = [
    ...stations.map((at) => beside(at, 1)),
    ...stations.toReversed().map((at) => beside(at, -1)),
  ];
  const steps = wallSteps(wall, leg.length).map((at): Primitive => ({
    kind: 'polyline',
    points: [beside(at, 1), beside(at, -1)],
    closed: false,
    pen: 'building',
  }));
  return [
    { kind: 'area', points, ink: 'building', opacity: 0.12, hatch: 'none' },
    { kind: 'polyline', points, closed: true, pen: 'building' },
    ...steps,
  ];
};

/** The walls and kerbs that legs stand on, as wide as they are, with a line at each of their steps. */
export const drawWallTops = (site: Site, { lines }: Pick<Layout, 'lines'>): readonly Primitive[] =>
  Object.values(lines).flatMap(({ id, legs }) => {
    const walls = site.lines[id]?.walls ?? {};
    // most lines stand on none, and may have many legs
    if (Object.keys(walls).length === 0) return [];
    return legs.flatMap((leg) => {
      const wall = walls[leg.id];
      return wall === undefined ? [] : drawTop(leg, wall);
    });
  });
