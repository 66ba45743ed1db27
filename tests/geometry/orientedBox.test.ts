import { expect, it } from 'vitest';
import { corners } from '../../src/geometry/orientedBox.ts';
import { signedArea } from '../../src/geometry/signedArea.ts';
import { fromDegrees } from '../../src/units/radians.ts';

it('corners of a box turned by a quarter stand tall and run round it', () => {
  const box = { centre: { x: 10, y: 20 }, halfWidth: 4, halfHeight: 2, angle: fromDegrees(90) };
  const points = corners(box);
  expect(signedArea(points)).toBeCloseTo(8 * 4, 12);
  expect(Math.max(...points.map(({ x }) => x))).toBeCloseTo(12, 12);
  expect(Math.max(...points.map(({ y }) => y))).toBeCloseTo(24, 12);
});
