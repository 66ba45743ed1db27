import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { VertexId } from '../../src/site/ids.ts';
import { limits } from '../../src/site/limits.ts';
import { freshOrders, verticesOf } from '../../src/site/pathOrder.ts';
import type { Path } from '../../src/site/path.ts';
import { withVertex } from '../../src/site/withVertex.ts';

describe('a vertex that joins a path', () => {
  it('[S7] stands where it was put, whatever keys the others have', () => {
    const keys = fc.uniqueArray(fc.stringMatching(/^[0-9A-Za-z]{1,4}$/), { maxLength: 8 });
    fc.assert(
      fc.property(keys, fc.nat(8), (orders, place) => {
        const path: Path = Object.fromEntries(
          orders.map((order, n) => [`vertex:${n}`, { mark: `mark:${n}`, order }] as const),
        );
        const before = verticesOf(path).map(({ id }) => id);
        const index = Math.min(place, before.length);
        const joined = withVertex(path, { id: 'vertex:new', mark: 'mark:new' }, index);
        expect(verticesOf(joined).map(({ id }) => id)).toEqual(
          before.toSpliced(index, 0, 'vertex:new' as VertexId),
        );
        expect(Object.keys(path)).toHaveLength(orders.length);
      }),
    );
  });

  it('[S5] is refused where a path is as long as a file may hold', () => {
    const path: Path = Object.fromEntries(
      freshOrders(limits.path).map((order, n) => [
        `vertex:${n}` as const,
        { mark: 'mark:1', order } as const,
      ]),
    );
    expect(() => withVertex(path, { id: 'vertex:new', mark: 'mark:1' }, 0)).toThrow(
      new RangeError('path: expected at most 20000 marks, found one more'),
    );
  });
});
