import { landUnits, type LandUnit } from '../units/landUnits.ts';
import { usualCallClosing } from '../trade/callClosings.ts';

/** The text of deed calls that is being read: it is kept on the device and goes with no site. */
export interface CallsAtHand {
  readonly text: string;
  /** What a distance without a unit is in; null where nobody has said, and the site's lengths decide. */
  readonly unit: LandUnit['name'] | null;
  /** What the calls have to close to: the n of 1:n. */
  readonly parts: number;
}

/** Before anything was pasted. */
export const noCalls: CallsAtHand = { text: '', unit: null, parts: usualCallClosing };

/** What a device kept of them; null where it kept them in another form. */
export const readCallsAtHand = (value: unknown): CallsAtHand | null => {
  if (typeof value !== 'object' || value === null) return null;
  const { text, unit, parts } = value as Readonly<Record<keyof CallsAtHand, unknown>>;
  if (typeof text !== 'string' || typeof parts !== 'number' || !(parts >= 1)) return null;
  const known = landUnits.find(({ name }) => name === unit);
  return { text, unit: known?.name ?? null, parts };
};
