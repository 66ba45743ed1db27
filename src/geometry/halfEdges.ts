/**
 * Triangles as half-edges, three in a row for each: the corner that each leaves from, as the index
 * of a point, and the half-edge that runs the other way in the neighbouring triangle, or -1.
 */
export interface HalfEdges {
  readonly corners: readonly number[];
  readonly twins: readonly number[];
}

/** The half-edge after another in its triangle. */
export const nextOf = (edge: number): number => (edge % 3 === 2 ? edge - 2 : edge + 1);

/** The half-edge before another in its triangle. */
export const beforeOf = (edge: number): number => (edge % 3 === 0 ? edge + 2 : edge - 1);
