import { expect, it } from 'vitest';
import { sameSpot } from '../../src/geometry/sameSpot.ts';

it('[G3] points 1/64 in apart are two spots, anything nearer is one', () => {
  expect(sameSpot({ x: 600_000, y: 0 }, { x: 600_000 + 1 / 128, y: 0 })).toBe(true);
  expect(sameSpot({ x: 600_000, y: 0 }, { x: 600_000 + 1 / 64, y: 0 })).toBe(false);
});
