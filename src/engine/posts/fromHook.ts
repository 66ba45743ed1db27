import { inches, type Inches } from '../../units/inches.ts';
import type { Run } from '../layout.ts';

/**
 * How far a station of a run lies from the mark at which the tape is hooked, inches; exact, so that
 * it is rounded once, when it is written.
 */
export const fromHook = (
  { length }: Pick<Run, 'length'>,
  station: Inches,
  hook: 'start' | 'end',
): Inches => inches(hook === 'start' ? station : length - station);
