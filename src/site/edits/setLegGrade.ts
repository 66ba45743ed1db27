import { entry } from '../entry.ts';
import type { LineId, VertexId } from '../ids.ts';
import { legAt } from '../legGround.ts';
import type { Site } from '../site.ts';
import { withEntry } from '../withEntries.ts';

/**
 * Lets the fabric of a leg follow the grade, or step in level panels. RangeError for an unknown line
 * or leg.
 */
export const setLegGrade = (
  site: Site,
  id: LineId,
  leg: VertexId,
  grade: 'follow' | 'step',
): Site => {
  const line = entry(site, 'lines', id);
  legAt(line, leg);
  const others = Object.entries(line.stepped).filter(([stepped]) => stepped !== leg);
  const stepped = grade === 'step' ? [...others, [leg, true] as const] : others;
  return withEntry(site, 'lines', id, { ...line, stepped: Object.fromEntries(stepped) });
};
