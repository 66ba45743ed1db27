import { clashIdOf, type Clash, type Pick } from './clash.ts';
import type { CopyParts } from './freshIds.ts';
import { keyOf, type Part, type Parts } from './part.ts';
import { same } from './same.ts';
import { mergedOrder, risingKeys, type Along } from './sequence.ts';

type Rows = ReadonlyMap<string, readonly Part[]>;

/** The parts that stand in a row, by what they stand in a row of, in their order. */
const rowsOf = (parts: Parts): Rows => {
  const rows = new Map<string, Part[]>();
  for (const part of parts.values()) {
    if (part.fields['order'] === undefined) continue;
    const row = `${part.kind} ${part.owner}`;
    rows.set(row, [...(rows.get(row) ?? []), part]);
  }
  const keyIn = ({ fields, id }: Part): string => `${String(fields['order'])} ${id}`;
  for (const [name, row] of rows) {
    rows.set(
      name,
      row.toSorted((a, b) => (keyIn(a) < keyIn(b) ? -1 : 1)),
    );
  }
  return rows;
};

const placeOf = (parts: Parts, corner: Part | undefined) =>
  parts.get(`marks ${String(corner?.fields['mark'])}`)?.fields['place'] as
    { readonly x: number; readonly y: number } | undefined;

/** How far along the way between two corners a corner lies, 0 to 1; beyond an end how far from it. */
const alongOf =
  (parts: Parts, row: ReadonlyMap<string, Part>): Along =>
  (id, [before, after]) => {
    const at = placeOf(parts, row.get(id));
    const [from, to] = [before, after].map((end) =>
      end === null ? undefined : placeOf(parts, row.get(end)),
    );
    if (at === undefined) return 0;
    if (from !== undefined && to !== undefined) {
      const [x, y] = [to.x - from.x, to.y - from.y];
      const squared = x * x + y * y;
      return squared === 0 ? 0 : ((at.x - from.x) * x + (at.y - from.y) * y) / squared;
    }
    if (from !== undefined) return Math.hypot(at.x - from.x, at.y - from.y);
    return to === undefined ? 0 : -Math.hypot(at.x - to.x, at.y - to.y);
  };

interface Ordering extends CopyParts {
  readonly pick: Pick;
  readonly clashes: Clash[];
}

const idsOf = (rows: Rows, name: string): readonly string[] =>
  (rows.get(name) ?? []).map(({ id }) => id);

/**
 * Gives every row of corners, leaves, level notes and alternatives its order, with keys that rise: those that
 * the parts have, or fresh ones where two copies gave one key twice. `parts` is written to.
 */
export const orderParts = (parts: Map<string, Part>, copies: Ordering): void => {
  const [base, first, second] = [rowsOf(copies.base), rowsOf(copies.first), rowsOf(copies.second)];
  for (const [name, row] of rowsOf(parts)) {
    const known = new Map(row.map((part) => [part.id, part]));
    const [part] = row;
    if (part === undefined) continue;
    const orders = {
      base: base.has(name) ? idsOf(base, name) : null,
      first: idsOf(first, name),
      second: idsOf(second, name),
    };
    const key = part.owner === '' ? part.kind : part.owner;
    const pick = (): 'first' | 'second' => {
      const id = clashIdOf(key, 'order');
      const clash = { id, is: 'ordered apart', key, kind: part.kind, field: 'order' } as const;
      copies.clashes.push({ ...clash, ...orders });
      return copies.pick(id);
    };
    const along = alongOf(parts, known);
    const order = mergedOrder({ orders, ids: new Set(known.keys()), along, pick });
    const sorted = order.flatMap((id) => known.get(id) ?? []);
    const keys = risingKeys(sorted.map(({ fields }) => String(fields['order'])));
    sorted.forEach((one, n) => {
      const fields = { ...one.fields, order: keys[n] };
      if (!same(fields, one.fields)) parts.set(keyOf(one), { ...one, fields });
    });
  }
};
