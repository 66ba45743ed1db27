import type { SitePoint } from '../../geometry/point.ts';
import { spot } from '../../geometry/tolerance.ts';
import { triangulate, type Triangulation } from '../../geometry/triangulated.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Shot } from './shot.ts';

/** Two shots on one spot that differ in height. */
export interface ShotClash {
  /** The shot that counts, and the one that does not. */
  readonly counts: string;
  readonly other: string;
  readonly at: SitePoint;
  /** How much higher the other is; below 0 lower. */
  readonly higher: Inches;
}

/** The ground as far as its shots reach: flat triangles from shot to shot. */
export interface Ground {
  readonly shots: readonly Shot[];
  readonly mesh: Triangulation;
  /** The heights of the shots, in their order. */
  readonly heights: readonly number[];
  readonly clashes: readonly ShotClash[];
}

const clashesOf = (shots: readonly Shot[], counts: readonly number[]): ShotClash[] =>
  shots.flatMap((shot, n) => {
    const first = shots[counts[n] ?? n] ?? shot;
    const higher = shot.z - first.z;
    if (Math.abs(higher) < spot) return [];
    const at = { x: first.x, y: first.y };
    return [{ counts: first.id, other: shot.id, at, higher: inches(higher) }];
  });

/**
 * The ground that shots describe: Delaunay's triangles, linear in each. Of shots on one spot the
 * first counts; one whose height differs from it by 1/64 in or more is told of. Fewer than three
 * shots, or all on one line, describe none.
 */
export const groundOf = (shots: readonly Shot[]): Ground => {
  const mesh = triangulate(shots.map(({ x, y }) => ({ x, y })));
  const clashes = clashesOf(shots, mesh.counts);
  return Object.freeze({ shots, mesh, heights: shots.map(({ z }) => z), clashes });
};
