import type { Inches } from '../units/inches.ts';
import type { Hardware } from './hardware.ts';
import { phrase } from '../phrases/phrase.ts';

/** What the sizes of a part are called where somebody types them, and how a length is written. */
export interface PartWords {
  readonly low: string;
  readonly planned: string;
  readonly high: string;
  readonly postLow: string;
  readonly postHigh: string;
  readonly frameLow: string;
  readonly frameHigh: string;
  readonly pin: string;
  readonly readings: string;
  readonly write: (length: Inches) => string;
}

/** A size by what it is called. */
type Sized = readonly [name: string, length: Inches];

const aboveZero = (sized: readonly Sized[], { write }: PartWords): string | null => {
  const found = sized.find(([, length]) => !(length > 0));
  if (found === undefined) return null;
  return phrase`${found[0]}: expected more than 0, found ${write(found[1])}`;
};

const rising = (sized: readonly Sized[], { write }: PartWords): string | null => {
  const falls = sized.findIndex(([, length], n) => length < (sized[n - 1]?.[1] ?? 0));
  const [above, below] = [sized[falls - 1], sized[falls]];
  if (above === undefined || below === undefined) return null;
  return phrase`${above[0]} ${write(above[1])} is more than ${below[0].toLowerCase()} ${write(below[1])}: expected the smaller first`;
};

const takesFault = ({ kind, takes }: Hardware, words: PartWords): string | null => {
  const { low, planned, high } = takes;
  const sized: readonly Sized[] = [
    [words.low, low],
    [words.planned, planned],
    [words.high, high],
  ];
  if (kind === 'closer') {
    const wide = sized.find(([, length]) => length !== 0);
    return wide === undefined ? null : phrase`${wide[0]}: expected nothing for a closer`;
  }
  const fault = aboveZero(sized, words) ?? rising(sized, words);
  if (fault !== null || kind === 'hinge' || low < high) return fault;
  return phrase`${words.high}: expected more than ${words.low.toLowerCase()} ${words.write(low)}; a catch of one size is met by no opening that is set with a tape`;
};

const fitsFault = ({ fits }: Hardware, words: PartWords): string | null => {
  const { post, frame } = fits;
  const ranges: readonly (readonly Sized[])[] = [
    post === null
      ? []
      : [
          [words.postLow, post.low],
          [words.postHigh, post.high],
        ],
    frame === null
      ? []
      : [
          [words.frameLow, frame.low],
          [words.frameHigh, frame.high],
        ],
  ];
  for (const range of ranges) {
    const fault = aboveZero(range, words) ?? rising(range, words);
    if (fault !== null) return fault;
  }
  return null;
};

const pinFault = ({ kind, pin }: Hardware, words: PartWords): string | null => {
  if (pin === null) return null;
  if (kind !== 'hinge') return phrase`${words.pin}: expected nothing but for a hinge`;
  return pin < 0 ? phrase`${words.pin}: expected 0 or more, found ${words.write(pin)}` : null;
};

/**
 * What is wrong with a part that somebody typed, as one line that names the size by `words`, else
 * null: no name, a size of zero or less, smallest, planned and largest out of order, a catch of one
 * size, a range of posts or frames upside down, a pin where there is none, a reading of zero or
 * less.
 */
export const partFault = (part: Hardware, words: PartWords): string | null => {
  if (part.label.trim() === '') return phrase`Name: expected one`;
  const readings = part.readings.map((length): Sized => [words.readings, length]);
  return (
    takesFault(part, words) ??
    aboveZero(readings, words) ??
    fitsFault(part, words) ??
    pinFault(part, words)
  );
};
