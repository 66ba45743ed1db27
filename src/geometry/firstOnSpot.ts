import { sameSpot } from './sameSpot.ts';
import { spot } from './tolerance.ts';
import type { SitePoint } from './point.ts';

const around = [-1, 0, 1];

/**
 * For each point on the ground the index of the one that counts in its place: its own, unless an
 * earlier one that counts is nearer than 1/64 in. In the order of the points.
 */
export const firstOnSpot = (points: readonly SitePoint[]): readonly number[] => {
  const cells = new Map<string, number[]>();
  const near = (column: number, row: number): number[] =>
    around.flatMap((dx) => around.flatMap((dy) => cells.get(`${column + dx},${row + dy}`) ?? []));
  return points.map((point, n) => {
    const [column, row] = [Math.floor(point.x / spot), Math.floor(point.y / spot)];
    const earlier = near(column, row).filter((other) => sameSpot(points[other] ?? point, point));
    if (earlier.length > 0) return Math.min(...earlier);
    const key = `${column},${row}`;
    cells.set(key, [...(cells.get(key) ?? []), n]);
    return n;
  });
};
