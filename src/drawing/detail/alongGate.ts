import type { Post } from '../../engine/post.ts';
import { moved } from '../../geometry/moved.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Radians } from '../../units/radians.ts';

/** A place by a gate, inches: `x` along it from the inside face of its first post, `y` to the left of that way. */
export interface GatePoint {
  readonly x: number;
  readonly y: number;
}

/** Places of the site as they lie by a gate that runs in a direction from its first post. */
export const alongGate = ({ at, od }: Pick<Post, 'at' | 'od'>, bearing: Radians) => {
  const face = moved(at, bearing, od / 2);
  const [cos, sin] = [Math.cos(bearing), Math.sin(bearing)];
  return ({ x, y }: SitePoint): GatePoint => {
    const [dx, dy] = [x - face.x, y - face.y];
    return { x: dx * cos + dy * sin, y: dy * cos - dx * sin };
  };
};
