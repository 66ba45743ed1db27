import type { OrientedBox } from './orientedBox.ts';

/**
 * Turned rectangles as overlap asks for them: each worked out once, however often it is compared. They are numbers
 * one after the other, `shapeSize` for each, so that thousands of them are one thing to keep. In the unit of their
 * space.
 */
export type BoxShapes = number[];

/** The least and most x and y of a shape, its middle, half its width and height, cosine and sine of its angle. */
export const shapeSize = 10;

/** Makes one shape of a list that of a box; `n` counts from 0, and may be one past the last. */
export const setShape = (shapes: BoxShapes, n: number, box: OrientedBox<string>): void => {
  const { centre, halfWidth, halfHeight, angle } = box;
  const { x, y } = centre;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const left = x - halfWidth - x;
  const right = x + halfWidth - x;
  const low = y - halfHeight - y;
  const high = y + halfHeight - y;
  const [fromX, toX] = [x + left * cos, x + right * cos];
  const [fromY, toY] = [y + left * sin, y + right * sin];
  const at = n * shapeSize;
  shapes[at] = Math.min(fromX, toX) - Math.max(low * sin, high * sin);
  shapes[at + 1] = Math.min(fromY, toY) + Math.min(low * cos, high * cos);
  shapes[at + 2] = Math.max(fromX, toX) - Math.min(low * sin, high * sin);
  shapes[at + 3] = Math.max(fromY, toY) + Math.max(low * cos, high * cos);
  shapes[at + 4] = x;
  shapes[at + 5] = y;
  shapes[at + 6] = halfWidth;
  shapes[at + 7] = halfHeight;
  shapes[at + 8] = cos;
  shapes[at + 9] = sin;
};

/** The shapes of some boxes, in their order. */
export const boxShapes = (boxes: readonly OrientedBox<string>[]): BoxShapes => {
  const shapes: BoxShapes = [];
  boxes.forEach((box, n) => setShape(shapes, n, box));
  return shapes;
};
