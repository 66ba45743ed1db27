import type { LengthStyle } from '../units/lengthStyle.ts';
import { formatLength } from '../units/formatLength.ts';
import { inches } from '../units/inches.ts';
import type { Inches } from '../units/inches.ts';
import { read, unread } from '../units/parsed.ts';
import type { Parsed } from '../units/parsed.ts';
import type { Radians } from '../units/radians.ts';
import { phrase } from '../phrases/phrase.ts';

/** What was typed for the piece being drawn; null leaves it to the pointer. */
export interface Typed {
  readonly length: Inches | null;
  /** Counter-clockwise from east. */
  readonly bearing: Radians | null;
}

/** Nothing typed: the pointer decides. */
export const untyped: Typed = { length: null, bearing: null };

/** The longest piece that can be typed: a mile. */
const longestTyped: Inches = inches(63_360);

/** Takes a typed length over 0 and up to a mile and any bearing; else one line that says why not. */
export const readTyped = ({ length, bearing }: Typed, style: LengthStyle): Parsed<Typed> => {
  const text =
    length === null || !Number.isFinite(length) ? `${length}` : formatLength(length, style);
  if (length !== null && !(length > 0)) return unread(phrase`Length ${text}: expected more than 0`);
  if (length !== null && length > longestTyped) {
    const most = formatLength(longestTyped, style);
    return unread(phrase`Length ${text}: expected at most a mile (${most})`);
  }
  if (bearing !== null && !Number.isFinite(bearing)) {
    return unread(phrase`Angle ${bearing}: expected a number of degrees`);
  }
  return read({ length, bearing });
};
