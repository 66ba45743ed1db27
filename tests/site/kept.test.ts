import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kept } from '../../src/site/kept.ts';

/** Objects in objects, as a document has them; no lists. */
const anyTree = fc.dictionary(
  fc.string(),
  fc.dictionary(
    fc.string(),
    fc.oneof(fc.string(), fc.double({ noNaN: true }), fc.boolean(), fc.constant(null)),
  ),
);

describe('keeping what says the same', () => {
  it('[S9] a copy gives the old value itself', () => {
    fc.assert(
      fc.property(anyTree, (old) => {
        expect(kept(old, structuredClone(old))).toBe(old);
      }),
    );
  });

  it('[S9] a change gives a new value that shares every other part', () => {
    const old = { a: { b: 1, c: { d: 2 } }, e: { f: null } };
    const fresh = kept(old, { a: { b: 9, c: { d: 2 } }, e: { f: null } });
    expect(fresh).toEqual({ a: { b: 9, c: { d: 2 } }, e: { f: null } });
    expect(fresh.a.c).toBe(old.a.c);
    expect(fresh.e).toBe(old.e);
    expect(old.a.b).toBe(1);
  });

  it('[S9] a field more, less or by another name is a change', () => {
    const old: Record<string, unknown> = { a: undefined, b: 1 };
    expect(kept(old, { b: 1 })).toEqual({ b: 1 });
    expect(kept<Record<string, unknown>>(old, { c: undefined, b: 1 })).toStrictEqual({
      c: undefined,
      b: 1,
    });
    expect(kept({ a: 1 }, { a: 1, b: 2 })).toEqual({ a: 1, b: 2 });
    expect(kept(3, { a: 1 })).toEqual({ a: 1 });
    expect(kept({ a: 1 }, null)).toBeNull();
  });
});
