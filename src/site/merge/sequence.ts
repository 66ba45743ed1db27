import { freshOrders } from '../pathOrder.ts';
import { same } from './same.ts';

type Ids = readonly string[];

/** The orders in which three documents have the same kind of thing, each by its ids. */
export interface Orders {
  /** Null where it has none: nobody knows the document, or it did not have the thing yet. */
  readonly base: Ids | null;
  readonly first: Ids;
  readonly second: Ids;
}

/** What stands between two neighbours, told from each of the two documents. */
interface Gap {
  readonly first: Ids;
  readonly second: Ids;
}

const kept = (ids: Ids, keep: ReadonlySet<string>): Ids => ids.filter((id) => keep.has(id));

/** The order of what both have, and whether both have it otherwise than it was, and than each other. */
const commonOrder = (
  { base, first, second }: Orders,
  both: ReadonlySet<string>,
): { readonly first: Ids; readonly second: Ids; readonly apart: 'apart' | 'alike' } => {
  const [one, two] = [kept(first, both), kept(second, both)];
  if (same(one, two)) return { first: one, second: one, apart: 'alike' };
  const was = new Set(base ?? []);
  const told = (ids: Ids): Ids => kept(ids, was);
  if (base !== null && same(told(one), kept(base, both))) {
    return { first: two, second: two, apart: 'alike' };
  }
  if (base !== null && same(told(two), kept(base, both))) {
    return { first: one, second: one, apart: 'alike' };
  }
  return { first: one, second: two, apart: 'apart' };
};

/** Where in `order` what stands between `before` and `after` belongs: so many of `order` come first. */
const gapOf = (order: Ids, before: string | undefined, after: string | undefined): number => {
  if (before !== undefined) return order.indexOf(before) + 1;
  return after === undefined ? 0 : order.indexOf(after);
};

/** What only one document has, by the gap of `order` that it belongs in. */
const gapsOf = (ids: Ids, order: Ids): ReadonlyMap<number, Ids> => {
  const known = new Set(order);
  const gaps = new Map<number, string[]>();
  ids.forEach((id, n) => {
    if (known.has(id)) return;
    const before = ids.slice(0, n).findLast((one) => known.has(one));
    const after = ids.slice(n + 1).find((one) => known.has(one));
    const gap = gapOf(order, before, after);
    gaps.set(gap, [...(gaps.get(gap) ?? []), id]);
  });
  return gaps;
};

/** Where a thing lies between two neighbours: what both documents put there is ordered by it. */
export type Along = (id: string, between: readonly [string | null, string | null]) => number;

/** Two rows as one, each in its own order; of two heads the one that lies nearer comes first. */
const zipped = ({ first, second }: Gap, near: (id: string) => number): string[] => {
  const row: string[] = [];
  let [n, m] = [0, 0];
  while (n < first.length || m < second.length) {
    const [one, other] = [first[n], second[m]];
    if (one !== undefined && (other === undefined || near(one) <= near(other))) {
      row.push(one);
      n += 1;
    } else if (other !== undefined) {
      row.push(other);
      m += 1;
    }
  }
  return row;
};

/** What is to be in order, and how. */
export interface Ordering {
  readonly orders: Orders;
  /** What the merged document has of it. */
  readonly ids: ReadonlySet<string>;
  readonly along: Along;
  /** Asked only where both have what both have in another order: whose is taken. */
  readonly pick: () => 'first' | 'second';
}

/**
 * The order of everything in `ids`. What only one document has keeps its neighbours; what both put between
 * the same two comes as it lies along the way, each document's in its own order.
 */
export const mergedOrder = ({ orders, ids, along, pick }: Ordering): Ids => {
  const [first, second] = [kept(orders.first, ids), kept(orders.second, ids)];
  const inSecond = new Set(second);
  const both = new Set(first.filter((id) => inSecond.has(id)));
  const common = commonOrder(orders, both);
  const order = common.apart === 'apart' ? common[pick()] : common.first;
  const [one, two] = [gapsOf(first, order), gapsOf(second, order)];
  const row = [...order, null].flatMap((id, n): string[] => {
    const between = [order[n - 1] ?? null, id] as const;
    const gap = { first: one.get(n) ?? [], second: two.get(n) ?? [] };
    const within = zipped(gap, (added) => along(added, between));
    return id === null ? within : [...within, id];
  });
  const placed = new Set(row);
  return [...row, ...[...ids].filter((id) => !placed.has(id)).toSorted()];
};

/** The keys that things have, as long as they rise in this order; else fresh ones for all. */
export const risingKeys = (keys: readonly string[]): readonly string[] =>
  keys.every((key, n) => n === 0 || (keys[n - 1] ?? '') < key) ? keys : freshOrders(keys.length);
