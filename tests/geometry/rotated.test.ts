import { expect, it } from 'vitest';
import { rotated } from '../../src/geometry/rotated.ts';
import { fromDegrees } from '../../src/units/radians.ts';

it('rotated turns from east to north about the centre', () => {
  const point = rotated({ x: 6, y: 2 }, { x: 2, y: 2 }, fromDegrees(90));
  expect(point.x).toBeCloseTo(2, 12);
  expect(point.y).toBeCloseTo(6, 12);
});
