import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { selectedInverse } from '../../src/geometry/selectedInverse.ts';
import { turned } from '../../src/geometry/turned.ts';
import { freeDependent, whitened } from '../../src/geometry/upperTriangle.ts';
import { anyPairs, problemOf } from './pairedEquations.ts';

describe('the inverse of squares where a triangle may be filled', () => {
  it('[G32] is the covariances that whitened unknowns have, and nothing for what is free', () => {
    let [seen, free] = [0, 0];
    fc.assert(
      fc.property(
        anyPairs,
        fc.constantFrom(0, 0.1),
        fc.constantFrom(1e-9, 0.3),
        (some, hold, least) => {
          const { fill, equations } = problemOf(some);
          const triangle = turned(fill, equations, hold);
          freeDependent(triangle, least);
          const size = triangle.free.length;
          const shadows = Array.from({ length: size }, (_, n) =>
            whitened(triangle, new Float64Array(size).fill(1, n, n + 1)),
          );
          const inverse = selectedInverse(triangle);
          for (let row = 0; row < size; row += 1) {
            free += triangle.free[row]!;
            for (let n = fill.starts[row]!; n < fill.starts[row + 1]!; n += 1) {
              const other = shadows[fill.columns[n]!]!;
              const theirs = shadows[row]!.reduce((sum, one, k) => sum + one * other[k]!, 0);
              const most = 1 + Math.max(...shadows.flatMap((one) => [...one].map(Math.abs))) ** 2;
              expect(Math.abs(inverse[n]! - theirs) / most).toBeLessThan(1e-9);
              seen += 1;
            }
          }
        },
      ),
    );
    expect(seen).toBeGreaterThan(1000);
    expect(free).toBeGreaterThan(100);
  });
});
