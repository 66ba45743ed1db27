import { describe, expect, it } from 'vitest';
import { moved } from '../../src/geometry/moved.ts';
import { fromDegrees } from '../../src/units/radians.ts';

describe('moved', () => {
  it('goes the distance in the direction', () => {
    const point = moved({ x: 1, y: 2 }, fromDegrees(30), 10);
    expect(point.x).toBeCloseTo(1 + 5 * Math.sqrt(3), 12);
    expect(point.y).toBeCloseTo(7, 12);
  });

  it('goes the other way for a negative distance', () => {
    expect(moved({ x: 1, y: 2 }, fromDegrees(0), -4)).toEqual({ x: -3, y: 2 });
  });
});
