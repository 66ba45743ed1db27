import type { MarkId } from '../../site/ids.ts';
import type { Mark } from '../../site/mark.ts';
import { marksInUse } from '../../site/marksInUse.ts';
import type { Site } from '../../site/site.ts';
import { roughMarks } from './roughMarks.ts';

/** A mark on which no fence and no feature stands. */
export interface LoneMark {
  readonly id: MarkId;
  readonly mark: Mark;
  /** Only satellites say where it is. */
  readonly rough: boolean;
}

/** The marks on which nothing stands: property pins, stakes to tape from. */
export const loneMarks = (site: Site): LoneMark[] => {
  const used = marksInUse(site);
  const rough = roughMarks(site);
  return (Object.entries(site.marks) as [MarkId, Mark][])
    .filter(([id]) => !used.has(id))
    .map(([id, mark]) => ({ id, mark, rough: rough.has(id) }));
};
