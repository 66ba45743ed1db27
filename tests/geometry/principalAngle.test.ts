import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { principalAngle } from '../../src/geometry/principalAngle.ts';

describe('principalAngle', () => {
  it('[G7] half a turn is written as +π, whichever way it was made', () => {
    expect(principalAngle(-Math.PI)).toBe(Math.PI);
    expect(principalAngle(Math.PI)).toBe(Math.PI);
    expect(principalAngle(3 * Math.PI)).toBe(Math.PI);
  });

  it('[G7] keeps the direction and lies above -π and at most π', () => {
    fc.assert(
      fc.property(fc.double({ min: -50, max: 50, noNaN: true }), (angle) => {
        const principal = principalAngle(angle);
        expect(principal).toBeGreaterThan(-Math.PI);
        expect(principal).toBeLessThanOrEqual(Math.PI);
        expect(Math.cos(principal - angle)).toBeCloseTo(1, 12);
      }),
    );
  });
});
