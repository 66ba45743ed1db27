import type { GateStanding } from '../../engine/sign/standingsOf.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { changeTexts } from './changeTexts.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The day behind initials; nothing where none was written. */
const day = (on: string): string => (on.trim() === '' ? '' : `, ${on.trim()}`);

/**
 * How the sign-off of a gate stands, in one line: who and when, or what changed first and how much
 * else did.
 */
export const standingText = (
  { standing, rested }: Pick<GateStanding, 'standing' | 'rested'>,
  style: LengthStyle,
): string => {
  if (standing.kind === 'unsigned') return phrase`Not signed off.`;
  const { by, on, check, rested: signed } = standing.signOff;
  const who = `${by}${day(on)}`;
  if (standing.kind === 'signed') return phrase`Signed off by ${who}, check ${check}.`;
  const [first = '', ...rest] = changeTexts(standing.changes, { signed, now: rested, style });
  const more = rest.length === 0 ? '' : phrase` And ${rest.length} more.`;
  return phrase`Sign-off by ${who} is void. ${first}${more}`;
};
