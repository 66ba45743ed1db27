import type { SitePoint } from '../geometry/point.ts';
import { farthest } from '../geometry/tolerance.ts';
import type { FoundRefusal } from '../site/found.ts';
import type { Drawn } from './drawn.ts';
import { together } from './together.ts';
import { phrase } from '../phrases/phrase.ts';

/** Things of a file near to 0, 0, and by how much they were moved to come there, inches. */
export interface Nearby {
  readonly drawn: readonly Drawn[];
  readonly moved: SitePoint | null;
  readonly refused: readonly FoundRefusal[];
}

const pointsOf = (drawn: Drawn): readonly SitePoint[] =>
  'path' in drawn ? drawn.path.points : [drawn.at];

const isFar = ({ x, y }: SitePoint): boolean => Math.max(Math.abs(x), Math.abs(y)) > farthest;

const middle = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor((values.length - 1) / 2)] ?? 0;

const movedBy = (drawn: Drawn, by: SitePoint): Drawn => {
  const move = ({ x, y }: SitePoint): SitePoint => ({ x: x - by.x, y: y - by.y });
  if (!('path' in drawn)) return { ...drawn, at: move(drawn.at) };
  return { ...drawn, path: { ...drawn.path, points: drawn.path.points.map(move) } };
};

/** What is too far off refused. */
const without = (drawn: readonly Drawn[], reason: string): Nearby => {
  const [kept, refused]: [Drawn[], FoundRefusal[]] = [[], []];
  for (const one of drawn) {
    if (pointsOf(one).some(isFar)) refused.push({ where: one.where, reason });
    else kept.push(one);
  }
  return { drawn: kept, moved: null, refused };
};

/**
 * Things whose coordinates a site cannot hold (ten miles from 0, 0, such as those of a state plane)
 * moved by whole `steps` (inches) towards 0, 0, all by the same, so that the middle one of the most
 * points that lie together lies there; all as they are where none is too far off, and where
 * `step` is null. What is too far from the others is refused.
 */
export const nearby = (drawn: readonly Drawn[], step: number | null): Nearby => {
  const points = drawn.flatMap(pointsOf);
  if (!points.some(isFar)) return { drawn, moved: null, refused: [] };
  if (step === null) return without(drawn, phrase`lies over 10 miles from 0, 0 of the yard`);
  const round = (value: number) => Math.round(value / step) * step;
  const most = together(points, farthest);
  const by = {
    x: round(middle(most.map(({ x }) => x))),
    y: round(middle(most.map(({ y }) => y))),
  };
  const all = drawn.map((one) => movedBy(one, by));
  const moved = by.x === 0 && by.y === 0 ? null : by;
  return { ...without(all, phrase`lies over 10 miles from the others`), moved };
};
