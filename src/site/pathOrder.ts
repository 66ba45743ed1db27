import { generateKeyBetween, generateNKeysBetween } from 'fractional-indexing';
import type { MarkId, VertexId } from './ids.ts';
import type { Path } from './path.ts';
import { quoted } from './quoted.ts';
import { phrase } from '../phrases/phrase.ts';

/** One mark that a path passes, under the id of the vertex and its order key. */
export interface Vertex {
  readonly id: VertexId;
  readonly mark: MarkId;
  readonly order: string;
}

const sorted = new WeakMap<Path, readonly Vertex[]>();

const compare = (a: string, b: string): number => (a < b ? -1 : Number(a > b));

/** Plain string order of the keys; the id decides between equal keys. */
const byOrder = <T extends { readonly id: string; readonly order: string }>(a: T, b: T): number =>
  compare(a.order, b.order) || compare(a.id, b.id);

/** The entries of a map with order keys, in their order, each with its id. */
export const inOrder = <Id extends string, T extends { readonly order: string }>(
  map: Readonly<Record<Id, T>>,
): (T & { readonly id: Id })[] =>
  (Object.entries(map) as [Id, T][]).map(([id, entry]) => ({ ...entry, id })).toSorted(byOrder);

/** The vertices of a path from its start to its end; remembered for each path. Empty for none. */
export const verticesOf = (path: Path): readonly Vertex[] => {
  const known = sorted.get(path);
  if (known !== undefined) return known;
  const vertices = inOrder<VertexId, Omit<Vertex, 'id'>>(path);
  sorted.set(path, vertices);
  return vertices;
};

/**
 * An order key that sorts after `a` and before `b`; null is the open end on that side. Null when
 * there is none: keys out of order, made elsewhere, or with no room for a key of 60 characters.
 */
export const freeOrder = (a: string | null, b: string | null): string | null => {
  try {
    const order = generateKeyBetween(a, b);
    const between = (a === null || order > a) && (b === null || order < b);
    return between && order.length <= 60 ? order : null;
  } catch {
    // the library knows only keys of its own making
    return null;
  }
};

/** As `freeOrder`, but RangeError with one line when there is none. */
export const orderBetween = (a: string | null, b: string | null): string => {
  const order = freeOrder(a, b);
  if (order !== null) return order;
  throw new RangeError(
    phrase`order: expected room between two keys, found ${quoted(a)} and ${quoted(b)}`,
  );
};

/** As many rising order keys as asked for, short and with room between them. */
export const freshOrders = (count: number): string[] => generateNKeysBetween(null, null, count);
