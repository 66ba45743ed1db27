import { distance } from '../geometry/distance.ts';
import type { MarkId } from '../site/ids.ts';
import type { Site } from '../site/site.ts';
import { inches } from '../units/inches.ts';
import type { Inches } from '../units/inches.ts';
import { standableMarks } from './standableMarks.ts';

/** Another mark, and how far off it is on the ground. */
export interface NearMark {
  readonly id: MarkId;
  readonly away: Inches;
}

/** The mark nearest to a mark that fence can stand at, itself aside; null for none or an unknown mark. */
export const nearestMark = (site: Site, id: MarkId): NearMark | null => {
  const from = site.marks[id];
  if (from === undefined) return null;
  return standableMarks(site)
    .filter((mark) => mark.id !== id)
    .map((mark): NearMark => ({ id: mark.id, away: inches(distance(from, mark.point)) }))
    .reduce<NearMark | null>(
      (best, one) => (best !== null && best.away <= one.away ? best : one),
      null,
    );
};
