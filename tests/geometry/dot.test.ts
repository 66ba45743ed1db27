import { expect, it } from 'vitest';
import { dot } from '../../src/geometry/dot.ts';

it('dot is 0 for vectors square to each other and the squared length for a vector with itself', () => {
  expect(dot({ x: 3, y: 4 }, { x: -4, y: 3 })).toBe(0);
  expect(dot({ x: 3, y: 4 }, { x: 3, y: 4 })).toBe(25);
});
