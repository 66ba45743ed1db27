import { slack } from '../../geometry/tolerance.ts';
import { gapAt } from '../gate/gapAt.ts';
import { adjustRemedy, unadjusted } from './adjustRemedy.ts';
import { fitRemedy } from './fitRemedy.ts';
import { hingeRemedy } from './hingeRemedy.ts';
import { latchRemedy } from './latchRemedy.ts';
import { measureRemedy } from './measureRemedy.ts';
import { remedyKinds, type Remedy } from './remedy.ts';
import { resetRemedy } from './resetRemedy.ts';
import type { SetCase } from './setCase.ts';
import { shortfallOf } from './shortfall.ts';
import { turnRemedy } from './turnRemedy.ts';

const reach = ({ takesUp }: Remedy): number => (takesUp === 'unlimited' ? Infinity : takesUp);

const byReach = (a: Remedy, b: Remedy): number =>
  // two that are unlimited are not a number apart
  (reach(a) === reach(b) ? 0 : reach(a) - reach(b)) ||
  remedyKinds.indexOf(a.kind) - remedyKinds.indexOf(b.kind);

/**
 * What can be done for a gate whose posts were set, ordered by how much each can take up, of two
 * alike the less work first. None where it hangs as it is; adjusting alone where that is enough.
 * Where it may hold the first is to measure.
 */
export const remediesFor = (set: SetCase): readonly Remedy[] => {
  const { opening, widths } = set;
  if (shortfallOf(unadjusted(opening), widths).by <= slack) return [];
  const adjusted = adjustRemedy(set);
  if (adjusted?.enough === true) return [adjusted];
  const missing = shortfallOf(opening, widths);
  const open = widths.every((width) => gapAt(opening, width).by === 0);
  return [
    open ? measureRemedy(set) : null,
    adjusted,
    hingeRemedy(set, missing),
    turnRemedy(set, missing),
    latchRemedy(set, missing),
    fitRemedy(set, missing),
    resetRemedy(set),
  ]
    .filter((remedy) => remedy !== null)
    .toSorted(byReach);
};
