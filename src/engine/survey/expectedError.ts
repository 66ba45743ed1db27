import type { MarkId } from '../../site/ids.ts';
import { covarianceOf, datumBy, type Share } from './datum.ts';
import { ellipseOf, type Ellipse } from './ellipse.ts';
import type { Held } from './held.ts';

/**
 * How far off a place may be that is made up of marks, such as a gate post that stands on a leg (the
 * shares are of its two ends, and add up to 1), or the way from one mark to another (shares 1 and -1).
 * By what each reading is trusted to, as if none were wrong.
 *
 * A body that is fast to two fixed marks or more is told from these. One that can move as a whole is
 * told from its own marks, or from two or more of them in `from`: these shift and turn by nothing on the
 * whole. Null where a mark is not held to the body, or where too few are told from to say.
 */
export const expectedError = (
  { datum }: Held,
  shares: readonly Share[],
  from?: readonly MarkId[],
): Ellipse | null => {
  if (datum === null || !shares.every(({ mark }) => datum.body.marks.has(mark))) return null;
  if (from === undefined) return ellipseOf(covarianceOf(datum, shares));
  const marks = new Set(from.filter((id) => datum.body.marks.has(id)));
  if (marks.size < 2 && !datum.body.fast) return null;
  return ellipseOf(covarianceOf(datumBy(datum.parts, datum.body, marks), shares));
};
