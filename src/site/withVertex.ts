import type { MarkId, VertexId } from './ids.ts';
import { limits } from './limits.ts';
import type { Path } from './path.ts';
import { freeOrder, freshOrders, verticesOf } from './pathOrder.ts';
import { phrase } from '../phrases/phrase.ts';

/** A vertex that is to join a path. */
interface Newcomer {
  readonly id: VertexId;
  readonly mark: MarkId;
}

/**
 * A path with one more vertex before the one at `index` (0 is the start, the number of vertices
 * the end). Where no key fits between the neighbours, every vertex gets a fresh one. RangeError
 * when the path is as long as a path may be.
 */
export const withVertex = (path: Path, { id, mark }: Newcomer, index: number): Path => {
  const vertices = verticesOf(path);
  if (vertices.length >= limits.path) {
    throw new RangeError(phrase`path: expected at most ${limits.path} marks, found one more`);
  }
  const order = freeOrder(vertices[index - 1]?.order ?? null, vertices[index]?.order ?? null);
  if (order !== null) return { ...path, [id]: { mark, order } };
  const all = vertices.toSpliced(index, 0, { id, mark, order: '' });
  const orders = freshOrders(all.length);
  return Object.fromEntries(
    all.map((vertex, n) => [vertex.id, { mark: vertex.mark, order: orders[n] ?? '' }]),
  );
};
