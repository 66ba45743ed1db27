import type { Projective } from './projective.ts';
import type { Tie } from './tie.ts';

/**
 * The map from pixels to inches of the ground that turns, scales and moves a picture so that two points
 * of it lie where they are tied to. A picture's y runs down and the ground's north, so it is one that
 * turns the plane over: with z = x + iy and w = u - iv it is z = m w + t, of which two ties say m and t.
 * Not finite for ties on one spot of the picture: `tiesFault` tells.
 */
export const similarityOf = (first: Tie, second: Tie): Projective => {
  const [u, v] = [second.u - first.u, second.v - first.v];
  const [x, y] = [second.x - first.x, second.y - first.y];
  const square = u * u + v * v;
  // m = (x + iy) / (u - iv)
  const [p, q] = [(x * u - y * v) / square, (x * v + y * u) / square];
  return [
    ...([p, q, first.x - p * first.u - q * first.v] as const),
    ...([q, -p, first.y - q * first.u + p * first.v] as const),
    ...([0, 0, 1] as const),
  ];
};
