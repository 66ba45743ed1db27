import { expect, it } from 'vitest';
import { fenceOutline } from '../../../src/drawing/explode/fenceOutline.ts';
import type { PaperPoint } from '../../../src/geometry/point.ts';

/** Paper points in a row, so far apart. */
const row = (count: number, step: number): PaperPoint[] =>
  Array.from({ length: count }, (_, n) => ({ x: n * step, y: 0 }) as PaperPoint);

const piecesOf = (points: readonly PaperPoint[]): number =>
  fenceOutline(points, false, { of: 'chain link', window: null }).length;

it('[D74] short pieces in a row, as on a curve, have an x about as often as fence that is straight', () => {
  const plain = piecesOf(row(2, 0.24));
  // a line from one place to another
  expect(plain).toBe(2);
  const crossed = piecesOf(row(2, 0.5));
  expect(crossed).toBeGreaterThan(plain);
  // 48 pieces of 0.24 in are 11.5 in: an x in every second, 24 where straight fence has 27
  expect(piecesOf(row(49, 0.24))).toBe(24 * plain + 24 * crossed);
  // too short to have room beside an x
  expect(piecesOf(row(49, 0.1))).toBe(48 * plain);
});
