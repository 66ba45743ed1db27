import { expect, it } from 'vitest';
import { scale } from '../../src/geometry/scale.ts';

it('scale stretches both axes and a negative factor turns about', () => {
  expect(scale({ x: 3, y: -4 }, 2)).toEqual({ x: 6, y: -8 });
  expect(scale({ x: 3, y: -4 }, -1)).toEqual({ x: -3, y: 4 });
});
