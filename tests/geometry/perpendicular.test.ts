import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cross } from '../../src/geometry/cross.ts';
import { dot } from '../../src/geometry/dot.ts';
import { perpendicular } from '../../src/geometry/perpendicular.ts';
import { sitePoint } from './arbitraries.ts';

describe('perpendicular', () => {
  it('turns east to north', () => {
    const { x, y } = perpendicular({ x: 2, y: 0 });
    expect([Math.abs(x), y]).toEqual([0, 2]);
  });

  it('is square to the vector, to its left, and as long', () => {
    fc.assert(
      fc.property(sitePoint, (vector) => {
        const left = perpendicular(vector);
        expect(Math.abs(dot(vector, left))).toBe(0);
        expect(cross(vector, left)).toBe(dot(vector, vector));
      }),
    );
  });
});
