import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mended } from '../../src/geometry/mended.ts';
import { turned, type Equation } from '../../src/geometry/turned.ts';
import { leastSquares } from '../../src/geometry/upperTriangle.ts';
import { anyPairs, problemOf } from './pairedEquations.ts';

/** What equations are off by where the unknowns are these. */
const offAt = (equations: readonly Equation[], x: Float64Array): Equation[] =>
  equations.map(({ columns, values, off }) => ({
    columns,
    values,
    off: columns.reduce((sum, column, n) => sum + values[n]! * x[column]!, off),
  }));

/** Equations that hold every unknown to 0. */
const holds = (size: number): Equation[] =>
  Array.from({ length: size }, (_, column) => ({ columns: [column], values: [1], off: 0 }));

describe('what mends equations by a triangle', () => {
  it('[G35] is their least squares where the triangle is theirs', () => {
    fc.assert(
      fc.property(anyPairs, (some) => {
        const { fill, equations } = problemOf(some);
        const all = [...equations, ...holds(2 * some.places)];
        const triangle = turned(fill, all);
        const theirs = leastSquares(triangle);
        mended(triangle, all).forEach((one, n) => expect(one).toBeCloseTo(theirs[n]!, 9));
      }),
    );
  });

  it('[G35] comes to it step by step where the triangle is of equations near to them', () => {
    fc.assert(
      fc.property(anyPairs, fc.double({ min: -0.02, max: 0.02, noNaN: true }), (some, bent) => {
        const { fill, equations } = problemOf(some);
        const all = [...equations, ...holds(2 * some.places)];
        const near = all.map(({ columns, values, off }, n) => ({
          columns,
          values: values.map((value, k) => value * (1 + bent * Math.cos(n + k))),
          off,
        }));
        const triangle = turned(fill, near);
        const theirs = leastSquares(turned(fill, all));
        let x = new Float64Array(2 * some.places);
        for (let step = 0; step < 20; step += 1) {
          const by = mended(triangle, offAt(all, x));
          x = x.map((one, n) => one + by[n]!);
        }
        x.forEach((one, n) => expect(one).toBeCloseTo(theirs[n]!, 9));
      }),
    );
  });
});
