import { orient2d } from 'robust-predicates';
import type { HalfEdges } from './halfEdges.ts';
import type { SitePoint } from './point.ts';

/** Told of indexes of points: above 0 when `c` is to the left of the way from `a` to `b`; exact. */
export type SideOf = (a: number, b: number, c: number) => number;

interface Sweep {
  readonly corners: number[];
  readonly twins: number[];
  /** For each point on the hull the next one, counter-clockwise, and the one before. */
  readonly after: Map<number, number>;
  readonly before: Map<number, number>;
  /** For each point on the hull the half-edge from it to the next. */
  readonly edges: Map<number, number>;
}

const sideOn = (points: readonly SitePoint[]): SideOf => {
  const at = (n: number): SitePoint => points[n] ?? { x: NaN, y: NaN };
  return (i, j, k) => {
    const [a, b, c] = [at(i), at(j), at(k)];
    // the library counts with y down
    return -orient2d(a.x, a.y, b.x, b.y, c.x, c.y);
  };
};

const link = ({ twins }: Sweep, edge: number, twin: number): void => {
  twins[edge] = twin;
  twins[twin] = edge;
};

const join = ({ after, before, edges }: Sweep, from: number, to: number, edge: number): void => {
  after.set(from, to);
  before.set(to, from);
  edges.set(from, edge);
};

/** Joins a point to a chain that it sees from the left: a triangle for each link, in order. */
const fan = (sweep: Sweep, chain: readonly number[], point: number): void => {
  const { corners, twins } = sweep;
  const first = corners.length;
  chain.slice(1).forEach((to, n) => {
    const edge = corners.length;
    corners.push(chain[n] ?? to, to, point);
    twins.push(-1, -1, -1);
    if (n > 0) link(sweep, edge + 2, edge - 2);
  });
  const [start, end] = [chain[0] ?? point, chain.at(-1) ?? point];
  join(sweep, end, point, corners.length - 2);
  join(sweep, point, start, first + 2);
};

/** The points of the hull between which a new one sees its edges from outside, clockwise. */
const seen = ({ after, before }: Sweep, point: number, last: number, sideOf: SideOf): number[] => {
  const chain = [last];
  for (let from = last; ;) {
    const to = after.get(from) ?? from;
    if (sideOf(from, to, point) >= 0) break;
    chain.unshift(to);
    from = to;
  }
  for (let to = last; ;) {
    const from = before.get(to) ?? to;
    if (sideOf(from, to, point) >= 0) break;
    chain.push(from);
    to = from;
  }
  return chain;
};

const grow = (sweep: Sweep, point: number, last: number, sideOf: SideOf): void => {
  const chain = seen(sweep, point, last, sideOf);
  const inner = chain.slice(1).map((from) => sweep.edges.get(from) ?? -1);
  const first = sweep.corners.length;
  fan(sweep, chain, point);
  inner.forEach((edge, n) => link(sweep, first + 3 * n, edge));
};

/**
 * Some points (told by their indexes, no two on one place) joined to triangles that run
 * counter-clockwise on the ground and fill the hull: from west to east, each to what it sees of
 * the hull of those before it. By exact predicates, so that no point is lost. None where all lie
 * on one line.
 */
export const sweptMesh = (points: readonly SitePoint[], chosen: readonly number[]): HalfEdges => {
  const sideOf = sideOn(points);
  const order = chosen.toSorted((i, j) => {
    const [a, b] = [points[i], points[j]];
    return a === undefined || b === undefined ? 0 : a.x - b.x || a.y - b.y;
  });
  const [first = 0, second = 0] = order;
  const off = order.findIndex((point) => sideOf(first, second, point) !== 0);
  if (off < 0) return { corners: [], twins: [] };
  const point = order[off] ?? 0;
  const line = order.slice(0, off);
  const chain = sideOf(first, second, point) > 0 ? line : line.toReversed();
  const sweep: Sweep = {
    corners: [],
    twins: [],
    after: new Map(),
    before: new Map(),
    edges: new Map(),
  };
  chain.slice(1).forEach((to, n) => join(sweep, chain[n] ?? to, to, 3 * n));
  fan(sweep, chain, point);
  order.slice(off + 1).forEach((next, n) => grow(sweep, next, order[off + n] ?? point, sideOf));
  return { corners: sweep.corners, twins: sweep.twins };
};
