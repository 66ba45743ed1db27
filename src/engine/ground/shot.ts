/** A point of the ground of known height: inches, x east, y north, z up from the site's datum. */
export interface Shot {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly z: number;
}
