import type { Term } from '../../../src/engine/opening.ts';
import { inches } from '../../../src/units/inches.ts';

/** What takes up width, in inches; one figure for a part that is known exactly. */
export const term = (role: Term['role'], low: number, planned = low, high = planned): Term => ({
  role,
  label: role,
  low: inches(low),
  planned: inches(planned),
  high: inches(high),
  source: 'measured',
  of: null,
  on: '',
  spread: role === 'latch' ? 'catch' : 'uncertain',
});
