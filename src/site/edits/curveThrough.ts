import { distance } from '../../geometry/distance.ts';
import { ordinateThrough } from '../../geometry/middleOrdinate.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { slack, spot } from '../../geometry/tolerance.ts';
import { entry } from '../entry.ts';
import type { LineId, VertexId } from '../ids.ts';
import { legAt, legGround } from '../legGround.ts';
import type { Site } from '../site.ts';
import { curveLeg } from './curveLeg.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * Bows a leg so that it passes a third point; straight where that lies on its chord. RangeError for an
 * unknown line or leg, and for a point in line with its marks but not between them, through which no
 * arc goes from the one to the other.
 */
export const curveThrough = (site: Site, line: LineId, leg: VertexId, at: SitePoint): Site => {
  const { start, end } = legGround(site, legAt(entry(site, 'lines', line), leg));
  const bow = ordinateThrough(start, at, end);
  const [before, after] = [distance(start, at), distance(at, end)];
  const between = Math.min(before, after) > slack && before + after < distance(start, end) + slack;
  if (bow === null && !between) {
    throw new RangeError(
      phrase`lines › ${line} › leg › ${leg}: expected a third point off its chord or between its marks, found one in line with them`,
    );
  }
  return curveLeg(site, { line, leg, bow: bow === null || Math.abs(bow) < spot ? 0 : bow });
};
