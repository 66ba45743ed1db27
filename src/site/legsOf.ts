import type { FenceLine } from './fenceLine.ts';
import type { MarkId, VertexId } from './ids.ts';
import { verticesOf } from './pathOrder.ts';

/** A straight piece of a line by its marks; `id` is the vertex at its start, `next` at its end. */
export interface DrawnLeg {
  readonly id: VertexId;
  readonly next: VertexId;
  readonly start: MarkId;
  readonly end: MarkId;
}

/**
 * The legs of a line from its start; a closed line of two marks or more has one more, back to its
 * first mark. None for a line of fewer than two marks.
 */
export const legsOf = ({ path, closed }: Pick<FenceLine, 'path' | 'closed'>): DrawnLeg[] => {
  const vertices = verticesOf(path);
  if (vertices.length < 2) return [];
  return vertices.flatMap((vertex, n) => {
    const next = vertices[n + 1] ?? (closed ? vertices[0] : undefined);
    if (next === undefined) return [];
    return { id: vertex.id, next: next.id, start: vertex.mark, end: next.mark };
  });
};
