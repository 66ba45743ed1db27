import type { MissingLetters } from './missingLetters.ts';
import { phrase } from '../phrases/phrase.ts';

/** So many letters are enough to know which script it is, so many parts where they stand. */
const [mostLetters, mostParts] = [8, 4];

/** What is not seen, steers a line or joins what stands before it is told by its number (Unicode). */
const unseen = /[\p{C}\p{M}\p{Z}]/u;

const told = (letter: string): string =>
  unseen.test(letter)
    ? `U+${(letter.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`
    : letter;

const partText = ({ where, letters }: MissingLetters): string => {
  const all = [...letters].map(told);
  const numbered = all.slice(0, mostLetters).some((letter) => letter.length > 2);
  const shown = all.slice(0, mostLetters).join(numbered ? ' ' : '');
  return phrase`“${shown}${all.length > mostLetters ? '…' : ''}” in ${where}`;
};

/** One line that says what of a site is printed as `?`; null where all is printed as it was typed. */
export const missingLettersText = (missing: readonly MissingLetters[]): string | null => {
  if (missing.length === 0) return null;
  const rest = missing.length - mostParts;
  const parts = missing.slice(0, mostParts).map(partText).join(', ');
  const more = rest > 0 ? phrase` and in ${rest} more` : '';
  return phrase`The sheet font has no letters for ${parts}${more}: they print as ?`;
};
