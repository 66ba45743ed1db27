import { expect, it } from 'vitest';
import { cross } from '../../src/geometry/cross.ts';

it('cross is positive towards the y axis, negative away from it, 0 in line', () => {
  expect(cross({ x: 2, y: 0 }, { x: 5, y: 3 })).toBe(6);
  expect(cross({ x: 5, y: 3 }, { x: 2, y: 0 })).toBe(-6);
  expect(cross({ x: 5, y: 3 }, { x: -10, y: -6 })).toBe(0);
});
