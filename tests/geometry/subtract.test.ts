import { expect, it } from 'vitest';
import { subtract } from '../../src/geometry/subtract.ts';

it('subtract gives the way from the second point to the first', () => {
  expect(subtract({ x: 5, y: 1 }, { x: 2, y: 4 })).toEqual({ x: 3, y: -3 });
});
