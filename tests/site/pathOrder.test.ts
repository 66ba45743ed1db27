import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freshOrders, inOrder, orderBetween, verticesOf } from '../../src/site/pathOrder.ts';

describe('the order of a path', () => {
  it('[S7] is that of its keys as plain strings, then of its ids', () => {
    const path = {
      'vertex:1': { mark: 'mark:1', order: 'a1' },
      'vertex:2': { mark: 'mark:2', order: 'Zz' },
      'vertex:3': { mark: 'mark:3', order: 'a0V' },
      'vertex:5': { mark: 'mark:5', order: 'a0' },
      'vertex:4': { mark: 'mark:4', order: 'a0' },
    } as const;
    expect(verticesOf(path).map((vertex) => vertex.id)).toEqual(
      [2, 4, 5, 3, 1].map((n) => `vertex:${n}`),
    );
    expect(verticesOf(path)).toBe(verticesOf(path));
    expect(verticesOf({})).toEqual([]);
    expect(inOrder({ b: { order: 'x' }, a: { order: 'y' } }).map((entry) => entry.id)).toEqual([
      'b',
      'a',
    ]);
  });

  it('[S7] there is room between any two keys, again and again', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(50), { maxLength: 60 }), (places) => {
        const keys: string[] = [];
        for (const place of places) {
          const at = Math.min(place, keys.length);
          keys.splice(at, 0, orderBetween(keys[at - 1] ?? null, keys[at] ?? null));
        }
        expect(keys.toSorted()).toEqual(keys);
        expect(new Set(keys).size).toBe(keys.length);
        expect(keys.every((key) => /^[0-9A-Za-z]{1,60}$/.test(key))).toBe(true);
      }),
    );
  });

  it('[S7] keys without room between them are told in one line', () => {
    expect(() => orderBetween('a1', 'a0')).toThrow(RangeError);
    expect(() => orderBetween('a0', 'a0')).toThrow(RangeError);
    expect(() => orderBetween('b', 'c')).toThrow(
      new RangeError('order: expected room between two keys, found "b" and "c"'),
    );
    const narrow = () => {
      let upper = 'a1';
      for (let n = 0; n < 1000; n += 1) upper = orderBetween('a0', upper);
    };
    expect(narrow).toThrow(RangeError);
  });

  it('fresh keys rise and leave room', () => {
    const orders = freshOrders(300);
    expect(orders.toSorted()).toEqual(orders);
    expect(new Set(orders).size).toBe(300);
    expect(freshOrders(0)).toEqual([]);
  });
});
