import type { Point } from './point.ts';

/** The straight piece between two points; it may have no length. */
export interface Segment<Space extends string> {
  readonly start: Point<Space>;
  readonly end: Point<Space>;
}
