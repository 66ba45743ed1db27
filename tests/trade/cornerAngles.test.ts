import { expect, it } from 'vitest';
import { cornerAngles, defaultCornerAngle } from '../../src/trade/cornerAngles.ts';
import { toDegrees } from '../../src/units/radians.ts';

it('[T7] published corner angles run 5, 10, 15, 30 degrees and the default is one of them', () => {
  // Caltrans 80-2.01B (5, 15), Iowa DOT 2519 (10), McElroy (30)
  expect(cornerAngles.map(({ angle }) => Math.round(toDegrees(angle) * 1e9) / 1e9)).toEqual([
    5, 10, 15, 30,
  ]);
  expect(cornerAngles).toContain(defaultCornerAngle);
  expect(toDegrees(defaultCornerAngle.angle)).toBeCloseTo(30, 12);
});
