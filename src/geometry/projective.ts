import type { Point } from './point.ts';

/**
 * A projective map of one plane to another: the rows of a 3 × 3 matrix that takes `(x, y, 1)` to a
 * multiple of the point that it goes to. A map whose last row is `0 0 1` keeps parallels.
 */
export type Projective = readonly [
  ...(readonly [number, number, number]),
  ...(readonly [number, number, number]),
  ...(readonly [number, number, number]),
];

/**
 * How deep a point lies, as seen by who took the picture: 0 on the horizon, beyond it of the other
 * sign. The local scale of the map falls with its square.
 */
export const depthAt = ([, , , , , , g, h, i]: Projective, { x, y }: Point<string>): number =>
  g * x + h * y + i;

/** Where a point goes. Not finite for a point on the horizon. */
export const projected = <From extends string, To extends string>(
  map: Projective,
  point: Point<From>,
): Point<To> => {
  const [a, b, c, d, e, f] = map;
  const { x, y } = point;
  const depth = depthAt(map, point);
  return { x: (a * x + b * y + c) / depth, y: (d * x + e * y + f) / depth };
};
