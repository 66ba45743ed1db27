import { ownMarks, marksOfFeatures } from '../site/marksInUse.ts';
import type { LineId, MarkId, VertexId } from '../site/ids.ts';
import { legsOf } from '../site/legsOf.ts';
import type { Site } from '../site/site.ts';

const held = (site: Site, marks: readonly MarkId[]): MarkId[] => {
  const stuck = marksOfFeatures(site);
  return marks.filter((id) => !stuck.has(id));
};

/** The marks of a leg that move with it: a house does not move because fence at its corner does. */
export const movableLegMarks = (site: Site, line: LineId, id: VertexId): MarkId[] => {
  const fence = site.lines[line];
  const leg = fence && legsOf(fence).find((drawn) => drawn.id === id);
  return leg === undefined ? [] : held(site, [leg.start, leg.end]);
};

/** The marks of a whole line that move with it; those that features stand on stay. */
export const movableLineMarks = (site: Site, line: LineId): MarkId[] => {
  const fence = site.lines[line];
  return fence === undefined ? [] : held(site, ownMarks(fence));
};
