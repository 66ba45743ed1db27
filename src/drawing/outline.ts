/**
 * A path in paper inches, y down. `arc` runs from angle `start` through `sweep` radians, positive
 * counter-clockwise as seen on the paper, and joins the path by a straight line if it does not
 * begin where the path stands.
 */
export type Outline = readonly Step[];

export type Step =
  | { readonly go: 'move' | 'line'; readonly x: number; readonly y: number }
  | ArcStep
  | { readonly go: 'close' };

/** A piece of a circle round a point. */
export interface ArcStep {
  readonly go: 'arc';
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly start: number;
  readonly sweep: number;
}
