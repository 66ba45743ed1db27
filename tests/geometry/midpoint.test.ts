import { expect, it } from 'vitest';
import { midpoint } from '../../src/geometry/midpoint.ts';

it('midpoint is halfway on both axes', () => {
  expect(midpoint({ x: 2, y: 10 }, { x: 5, y: -4 })).toEqual({ x: 3.5, y: 3 });
});
