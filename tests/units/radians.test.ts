import { expect, it } from 'vitest';
import { fromDegrees, radians, toDegrees } from '../../src/units/radians.ts';

it('[U9] half a turn is 180 degrees, either way', () => {
  expect(fromDegrees(180)).toBe(Math.PI);
  expect(toDegrees(radians(-Math.PI))).toBe(-180);
});
