import type { Survey } from '../engine/survey/survey.ts';
import type { MarkId } from '../site/ids.ts';

/**
 * The marks that move when some do: tapes hold the marks of a body to each other, so one of them takes
 * all along. A body that is held to fixed marks goes nowhere, and its marks are left out.
 */
export const movedTogether = ({ body }: Survey, ids: readonly MarkId[]): readonly MarkId[] => {
  if (body === null || !ids.some((id) => body.marks.has(id))) return ids;
  if (body.fast) return ids.filter((id) => !body.marks.has(id));
  return [...new Set([...ids, ...body.marks])];
};
