import type { Opening, Term } from '../engine/opening.ts';
import { formatLength } from '../units/formatLength.ts';
import { inches, sum } from '../units/inches.ts';
import type { LengthStyle } from '../units/lengthStyle.ts';
import { columns } from './columns.ts';
import { phrase, phraseOf } from '../phrases/phrase.ts';

type End = 'low' | 'high';

const words: Readonly<Record<Term['role'], string>> = {
  leaf: phraseOf('sum')`leaves`,
  hinge: phraseOf('sum')`hinges`,
  latch: phraseOf('sum')`gap`,
  stop: phraseOf('sum')`stop`,
  overlap: phraseOf('sum')`overlap`,
  gap: phraseOf('sum')`gap`,
};

/** What an end is added up of, by role: what is not sure at one of its ends, what is free at another. */
const sumText = (
  { terms }: Opening,
  at: { readonly unsure: End; readonly free: End },
  write: (length: number) => string,
): string => {
  const roles = [...new Set(terms.map(({ role }) => role))];
  return roles
    .map((role) => {
      const own = terms.filter((term) => term.role === role);
      const size = sum(own.map((term) => term[term.spread === 'uncertain' ? at.unsure : at.free]));
      return `${words[role]} ${write(size)}`;
    })
    .join(' + ');
};

/** Half of what the unsure parts vary by together, if each varies by itself. */
const statistical = ({ terms }: Opening, write: (length: number) => string): string => {
  const halves = terms
    .filter(({ spread, low, high }) => spread === 'uncertain' && high > low)
    .map(({ low, high }) => write((high - low) / 2));
  if (halves.length === 0) return phrase`nothing is unsure`;
  return phrase`root of the sum of squares of ${halves.join(', ')} about the middle; no promise for one gate`;
};

/**
 * The sure, the possible and the statistical range of an opening, each end with what it is added up
 * of, as aligned lines. Written to the nearest mark of the style; where a crew may set, rounded
 * inwards, is said by `holdsLine`.
 */
export const rangeLines = (opening: Opening, style: LengthStyle): string[] => {
  const write = (length: number): string => formatLength(inches(length), style);
  const { holdsFrom, holdsTo, mayFrom, mayTo, likelyFrom, likelyTo } = opening;
  const ends = (from: number, to: number): string[] => [write(from), phrase`to`, write(to)];
  const summed = (unsureFrom: End, unsureTo: End): string =>
    `${sumText(opening, { unsure: unsureFrom, free: 'low' }, write)}; ${sumText(opening, { unsure: unsureTo, free: 'high' }, write)}`;
  return columns(
    [
      [phrase`for sure`, ...ends(holdsFrom, holdsTo), summed('high', 'low')],
      [phrase`possible`, ...ends(mayFrom, mayTo), summed('low', 'high')],
      [phrase`statistical`, ...ends(likelyFrom, likelyTo), statistical(opening, write)],
    ],
    ['left', 'right', 'left', 'right'],
  );
};
