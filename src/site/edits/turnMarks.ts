import type { SitePoint } from '../../geometry/point.ts';
import { rotated } from '../../geometry/rotated.ts';
import type { Radians } from '../../units/radians.ts';
import { entry } from '../entry.ts';
import { followed } from '../followed.ts';
import { keptBends } from '../keptBends.ts';
import type { MarkId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withEntries } from '../withEntries.ts';

/** Marks, the point that they turn about, and by how much: radians, counter-clockwise above zero. */
export interface MarksTurn {
  readonly marks: readonly MarkId[];
  readonly about: SitePoint;
  readonly by: Radians;
}

/**
 * Turns marks about a point, with all that stands on them and what follows that; what was read of
 * their bearings is left as it was read. RangeError for an unknown mark and beyond ten miles.
 */
export const turnMarks = (site: Site, { marks, about, by }: MarksTurn): Site => {
  const turned = [...new Set(marks)].map((id) => {
    const mark = entry(site, 'marks', id);
    const { x, y } = rotated({ x: mark.x, y: mark.y }, about, by);
    return [id, { ...mark, x, y }] as const;
  });
  return keptBends(site, followed(withEntries(site, 'marks', Object.fromEntries(turned)), marks));
};
