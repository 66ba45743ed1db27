import { expect, it } from 'vitest';
import { fenceOutline } from '../../../src/drawing/explode/fenceOutline.ts';
import type { PaperPoint } from '../../../src/geometry/point.ts';

/** Paper points in a row, so far apart. */
const row = (count: number, step: number): PaperPoint[] =>
  Array.from({ length: count }, (_, n) => ({ x: n * step, y: 0 }) as PaperPoint);

const piecesOf = (points: readonly PaperPoint[]): number =>
  fenceOutline(points, false, null).length;

it('[D74] short pieces in a row, as on a curve, have an x about as often as fence that is straight', () => {
  const [one] = [piecesOf(row(2, 0.24))];
  expect(one).toBe(1);
  // 48 pieces of 0.24 in are 11.5 in: an x in every second, which is 24 where a straight one has 27
  const plain = 48 * one;
  const withCross = piecesOf([...row(2, 0.5)]) - 1;
  expect(withCross).toBeGreaterThan(0);
  expect(piecesOf(row(49, 0.24))).toBe(plain + 24 * withCross);
  // too short to have room beside an x
  expect(piecesOf(row(49, 0.1))).toBe(48);
});
