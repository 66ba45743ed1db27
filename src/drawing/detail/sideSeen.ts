import { signedArea } from '../../geometry/signedArea.ts';
import type { LineId } from '../../site/ids.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';

/**
 * From which side of a fence line one sees it who stands on the right of its legs: only a line that closes has
 * an inside; null for every other.
 */
export const sideSeen = (site: Site, id: LineId): 'inside' | 'outside' | null => {
  const line = site.lines[id];
  if (line === undefined || !line.closed) return null;
  const area = signedArea(verticesOf(line.path).flatMap(({ mark }) => site.marks[mark] ?? []));
  if (area === 0) return null;
  // counter-clockwise its inside is on the left
  return area > 0 ? 'outside' : 'inside';
};
