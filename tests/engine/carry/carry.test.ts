import { describe, expect, it } from 'vitest';
import { alike } from '../../../src/engine/carry/alike.ts';
import { newCarry } from '../../../src/engine/carry/carry.ts';

describe('carry', () => {
  it('takes a piece over only where it was worked out from the very same things', () => {
    let worked = 0;
    const made = () => ({ worked: (worked += 1) });
    const things = { x: 1 };
    const first = newCarry();
    const kept = first.shelf<{ worked: number }>('kind').take('a', [things, 2], made);
    const next = newCarry(first.pieces);
    const shelf = next.shelf<{ worked: number }>('kind');
    expect(shelf.take('a', [things, 2], made)).toBe(kept);
    expect(shelf.take('a', [{ x: 1 }, 2], made)).not.toBe(kept);
    expect(shelf.take('a', [things], made)).not.toBe(kept);
    expect(shelf.take('b', [things, 2], made)).not.toBe(kept);
    expect(next.shelf<{ worked: number }>('other').take('a', [things, 2], made)).not.toBe(kept);
    expect(worked).toBe(5);
  });

  it('takes no more over than the last layout had', () => {
    const first = newCarry();
    first.shelf<object>('kind').take('a', [], () => ({}));
    expect(newCarry(first.pieces).pieces.get('kind')?.size ?? 0).toBe(0);
  });

  it('settles on what was there where nothing in it has changed', () => {
    const first = newCarry();
    const kept = first.shelf<object>('kind').settle('a', { x: [1, { y: 2 }] });
    const shelf = newCarry(first.pieces).shelf<object>('kind');
    expect(shelf.settle('a', { x: [1, { y: 2 }] })).toBe(kept);
    const changed = { x: [1, { y: 3 }] };
    expect(shelf.settle('a', changed)).toBe(changed);
  });
});

describe('alike', () => {
  it.each([
    [1, 1, true],
    [0, -0, false],
    [NaN, NaN, true],
    [null, {}, false],
    [[1, 2], [1, 2], true],
    [[1, 2], [1], false],
    [{ a: 1 }, { b: 1 }, false],
    [{ a: undefined }, {}, false],
    [{ a: { b: [1] } }, { a: { b: [1] } }, true],
    [[], {}, false],
    [new Map(), new Map(), false],
  ])('%j and %j: %s', (a, b, same) => {
    expect(alike(a, b)).toBe(same);
  });
});
