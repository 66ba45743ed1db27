import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add } from '../../src/geometry/add.ts';
import { subtract } from '../../src/geometry/subtract.ts';
import { sitePoint } from './arbitraries.ts';

describe('add', () => {
  it('adds each axis', () => {
    expect(add({ x: 1, y: 2 }, { x: 10, y: -5 })).toEqual({ x: 11, y: -3 });
  });

  it('is undone by subtract, exactly on the 1/64 in grid', () => {
    fc.assert(
      fc.property(sitePoint, sitePoint, (a, b) => {
        expect(subtract(add(a, b), b)).toEqual(a);
      }),
    );
  });
});
