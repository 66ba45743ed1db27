import { cross } from '../../geometry/cross.ts';
import { subtract } from '../../geometry/subtract.ts';
import { entry } from '../entry.ts';
import type { MarkId } from '../ids.ts';
import { quoted } from '../quoted.ts';
import type { Site } from '../site.ts';
import { moveMark } from './moveMark.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * Puts a mark as far on the other side of the line through two others: two tapes from these meet on
 * either side, and the sketch says on which. RangeError for an unknown mark, and for two on one spot.
 */
export const mirrorMark = (site: Site, id: MarkId, across: readonly [MarkId, MarkId]): Site => {
  const [here, start, end] = [id, ...across].map((mark) => entry(site, 'marks', mark as MarkId));
  if (here === undefined || start === undefined || end === undefined) return site;
  const way = subtract({ x: end.x, y: end.y }, { x: start.x, y: start.y });
  const square = way.x * way.x + way.y * way.y;
  if (square === 0) {
    throw new RangeError(
      phrase`marks: expected two marks apart to mirror at, found ${quoted(across.join(' '))} on one spot`,
    );
  }
  const off = cross(way, subtract({ x: here.x, y: here.y }, { x: start.x, y: start.y })) / square;
  return moveMark(site, id, { x: here.x + 2 * off * way.y, y: here.y - 2 * off * way.x });
};
