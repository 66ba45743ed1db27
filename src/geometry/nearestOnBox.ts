import { corners, type OrientedBox } from './orientedBox.ts';
import type { Point } from './point.ts';

/** The point on the edge of a box that is nearest to another point; of edges that are as near the first one's. */
export const nearestOnBox = <Space extends string>(
  point: Point<Space>,
  box: OrientedBox<NoInfer<Space>>,
): Point<Space> => {
  const around = corners(box);
  let [nearestX, nearestY, least] = [point.x, point.y, Infinity];
  for (let n = 0; n < around.length; n++) {
    const [start, end] = [around[n] ?? point, around[(n + 1) % around.length] ?? point];
    const [wayX, wayY] = [end.x - start.x, end.y - start.y];
    const squared = wayX * wayX + wayY * wayY;
    const past = (point.x - start.x) * wayX + (point.y - start.y) * wayY;
    const share = squared === 0 ? 0 : Math.min(1, Math.max(0, past / squared));
    // from the nearer end, as `lerp` does
    const x = share < 0.5 ? start.x + wayX * share : end.x - wayX * (1 - share);
    const y = share < 0.5 ? start.y + wayY * share : end.y - wayY * (1 - share);
    const far = Math.hypot(x - point.x, y - point.y);
    if (far < least) [nearestX, nearestY, least] = [x, y, far];
  }
  return { x: nearestX, y: nearestY };
};
