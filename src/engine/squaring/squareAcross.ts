import { roundLength } from '../../units/roundLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { formatLength } from '../../units/formatLength.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What a tape reads across a square corner, from the end of one leg to the end of the other. */
export const squareAcross = (one: Inches, other: Inches): Inches => inches(Math.hypot(one, other));

/**
 * By how much the end of a leg stands off its square place where the tape reads `across` from it to the
 * end of the `base`, all in inches: along the base, above zero towards the end of the base. One line for
 * three lengths that make no triangle.
 */
export const outOfSquare = (
  { base, leg, across }: { readonly base: Inches; readonly leg: Inches; readonly across: Inches },
  style: LengthStyle,
): Parsed<Inches> => {
  const [low, high] = [Math.abs(base - leg), base + leg];
  if (across >= low && across <= high && base > 0) {
    // the law of cosines: what the leg has of the way of the base
    return read(inches((base ** 2 + leg ** 2 - across ** 2) / (2 * base)));
  }
  const write = (length: number): string => formatLength(inches(length), style);
  return unread(
    phrase`Across ${write(across)}: expected from ${write(low)} to ${write(high)} with these two legs`,
  );
};

/**
 * By how much a corner is out that is set by the way across as it is written on a tape: how far the end
 * of the leg comes to stand off its square place, inches, zero or more.
 */
export const outByRounding = (base: Inches, leg: Inches, style: LengthStyle): Inches => {
  const across = roundLength(squareAcross(base, leg), style);
  const out = outOfSquare({ base, leg, across }, style);
  return inches(out.ok ? Math.abs(out.value) : 0);
};
