import { boundsOfBox, type OrientedBox } from './orientedBox.ts';
import type { Bounds } from './bounds.ts';

/** A turned rectangle as overlap asks for it: worked out once, however often it is compared. */
export interface BoxShape extends Bounds {
  readonly x: number;
  readonly y: number;
  readonly halfWidth: number;
  readonly halfHeight: number;
  /** Of its angle, from the x axis towards the y axis. */
  readonly cos: number;
  readonly sin: number;
}

/** The shape of a box, in the unit of its space. */
export const boxShape = (box: OrientedBox<string>): BoxShape => {
  const { centre, halfWidth, halfHeight, angle } = box;
  const { minX, minY, maxX, maxY } = boundsOfBox(box);
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return { minX, minY, maxX, maxY, x: centre.x, y: centre.y, halfWidth, halfHeight, cos, sin };
};
