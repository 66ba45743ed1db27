import { entry } from '../entry.ts';
import type { Gate } from '../gate.ts';
import type { GateId } from '../ids.ts';
import type { Site } from '../site.ts';
import { withGate } from '../withGate.ts';

/**
 * Changes what is said of a gate beside its place and its leaves: clearance under the leaves, in
 * inches, closer, hold-open post, receiver, height of the latch and of a sill,
 * what has to pass, whether it is powered. RangeError for an unknown gate, a part that is no
 * closer and a length that cannot be.
 */
export const changeGate = (
  site: Site,
  id: GateId,
  fields: Partial<
    Pick<
      Gate,
      | 'bottom'
      | 'closer'
      | 'holdOpen'
      | 'receiver'
      | 'latchHeight'
      | 'threshold'
      | 'route'
      | 'powered'
    >
  >,
): Site => withGate(site, id, { ...entry(site, 'gates', id), ...fields });
