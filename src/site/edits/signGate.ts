import { entry } from '../entry.ts';
import type { GateId } from '../ids.ts';
import type { SignOff } from '../signOff.ts';
import type { Site } from '../site.ts';
import { withGate } from '../withGate.ts';

/**
 * Signs the opening of a gate off, or takes the sign-off back with null. RangeError for an unknown
 * gate, for no initials and for a check value of another form.
 */
export const signGate = (site: Site, id: GateId, signed: SignOff | null): Site =>
  withGate(site, id, { ...entry(site, 'gates', id), signed });
