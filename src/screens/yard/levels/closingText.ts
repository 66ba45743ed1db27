import { phrase } from '../../../phrases/phrase.ts';
import type { LevelClosing } from '../../../engine/ground/levelBook.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { inches } from '../../../units/inches.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';

const spreads: Readonly<Record<LevelClosing['spread'], string>> = {
  setups: phrase`spread evenly over the setups`,
  distances: phrase`spread over the setups by their distances`,
  not: phrase`not spread: level it again, or allow more`,
};

/** How level notes closed, in one line; null for a run that closes on nothing. */
export const closingText = (closing: LevelClosing | null, style: LengthStyle): string => {
  if (closing === null) {
    return phrase`The run does not close: a last foresight on the benchmark, or on another known height, would show whether it is right.`;
  }
  const { misclosure, allowable, spread } = closing;
  const write = (length: number): string => formatLength(inches(length), style);
  if (misclosure === 0) return phrase`Closes exactly.`;
  const most =
    allowable === null
      ? phrase`nobody has said how much is allowed`
      : phrase`${write(allowable)} allowed`;
  const off = write(Math.abs(misclosure));
  return misclosure > 0
    ? phrase`Closes ${off} high, ${most}; ${spreads[spread]}.`
    : phrase`Closes ${off} low, ${most}; ${spreads[spread]}.`;
};
