import { slack } from '../../geometry/tolerance.ts';
import { inches, sum } from '../../units/inches.ts';
import { leavesOf } from '../gate/termsOf.ts';
import type { Remedy } from './remedy.ts';
import { onTape, writer, type SetCase } from './setCase.ts';
import { holdsShifted, type Shortfall } from './shortfall.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 * To turn the hinges round their posts until the pin is level with the face: that makes room by
 * what lies between face and pin, and puts the leaf out of line with the fence. Null where room is
 * not what is missing, or nobody has said where the pin is. Geometry of a round post.
 */
export const turnRemedy = (set: SetCase, missing: Shortfall): Remedy | null => {
  const pins = leavesOf(set.gate).flatMap(({ hinge }) =>
    hinge === null ? [] : (set.site.hardware[hinge]?.pin ?? []),
  );
  const reach = sum(pins);
  if (missing.way !== 'room' || reach <= slack) return null;
  const write = writer(set);
  const by = inches(Math.min(onTape(set, missing.by, 'ceil'), reach));
  return {
    kind: 'turn hinges',
    what: phrase`Turn the hinges round their posts until they take ${write(by)} less: the leaf then hangs out of line with the fence, so turn every hinge of it alike.`,
    takesUp: reach,
    enough: holdsShifted(set.opening, set.widths, { way: 'room', by }),
    working: phrase`from face to pin ${write(reach)}${pins.length > 1 ? phrase` in all` : ''}; ${write(missing.by)} is missing`,
    post: null,
  };
};
