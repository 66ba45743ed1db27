import type { LineLayout } from '../../engine/layout.ts';
import { boundsOf } from '../../geometry/bounds.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { trackPoints } from '../../geometry/track.ts';
import type { Site } from '../../site/site.ts';

/** The middle of all that lines and marks of a yard cover; null for an empty one. */
export const yardMiddle = (
  lines: readonly LineLayout[],
  site: Pick<Site, 'marks'>,
): SitePoint | null => {
  const ends = lines.flatMap(({ legs }) => legs.flatMap((leg) => trackPoints(leg, 12)));
  const bounds = boundsOf([...ends, ...Object.values(site.marks)]);
  if (bounds === null) return null;
  return { x: (bounds.minX + bounds.maxX) / 2, y: (bounds.minY + bounds.maxY) / 2 };
};
