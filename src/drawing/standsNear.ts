import type { Bounds } from '../geometry/bounds.ts';
import { groundBounds } from './groundBounds.ts';
import { mostBeside } from './isNear.ts';
import type { Primitive } from './primitive.ts';
import type { Projection } from './projection.ts';

/**
 * Tells of primitives one by one whether anything of them may be in a clip (paper inches), as `isNear` does; all are
 * near where there is none. It is asked of all of a drawing for each of its sheets, so it looks on the ground.
 */
export const standsNear = (
  clip: Bounds | undefined,
  { origin, scale }: Projection,
): ((primitive: Primitive) => boolean) => {
  if (clip === undefined) return () => true;
  const west = origin.x + (clip.minX - mostBeside) / scale;
  const east = origin.x + (clip.maxX + mostBeside) / scale;
  const north = origin.y - (clip.minY - mostBeside) / scale;
  const south = origin.y - (clip.maxY + mostBeside) / scale;
  return (primitive) => {
    if ('at' in primitive) {
      const { x, y } = primitive.at;
      return x >= west && x <= east && y >= south && y <= north;
    }
    const ground = groundBounds([primitive]);
    if (ground === null) return false;
    const { minX, minY, maxX, maxY } = ground;
    return minX <= east && maxX >= west && minY <= north && maxY >= south;
  };
};
