/**
 * A point of a picture, `u` to the right and `v` down in its pixels, and the point of the ground that
 * it shows, inches.
 */
export interface Tie {
  readonly u: number;
  readonly v: number;
  readonly x: number;
  readonly y: number;
}
