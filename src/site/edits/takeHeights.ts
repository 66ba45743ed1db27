import type { ShotId } from '../ids.ts';
import type { Shot } from '../shot.ts';
import type { Site } from '../site.ts';
import { withEntries } from '../withEntries.ts';

/** The height that a point came out at, inches over the datum. */
export interface PointHeight {
  readonly point: string;
  readonly height: Shot['z'];
}

/**
 * Gives every grade shot that has the name of a point the height of that point; of points of one
 * name the last counts, and shots without a name are left alone.
 */
export const takeHeights = (site: Site, points: readonly PointHeight[]): Site => {
  const heights = new Map(points.map(({ point, height }) => [point.trim(), height]));
  const shots = (Object.entries(site.shots) as [ShotId, Shot][]).flatMap(([id, shot]) => {
    const name = shot.label.trim();
    const z = name === '' ? undefined : heights.get(name);
    return z === undefined ? [] : [[id, { ...shot, z }] as const];
  });
  return withEntries(site, 'shots', Object.fromEntries(shots));
};
