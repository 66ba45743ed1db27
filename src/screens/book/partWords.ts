import { phrase } from '../../phrases/phrase.ts';
import type { Hardware } from '../../site/hardware.ts';
import type { PartWords } from '../../site/partFault.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { sizeText } from '../fields/sizeText.ts';

/** What several of a kind of part are called, what adds one, and what a new one is called. */
interface KindNames {
  readonly all: string;
  readonly add: string;
  readonly fresh: string;
}

/** Each kind of part as it is named in the book. */
export const kindNames: Readonly<Record<Hardware['kind'], KindNames>> = {
  hinge: { all: phrase`Hinges`, add: phrase`Add hinge`, fresh: phrase`New hinge` },
  latch: { all: phrase`Latches`, add: phrase`Add latch`, fresh: phrase`New latch` },
  'drop rod': { all: phrase`Drop rods`, add: phrase`Add drop rod`, fresh: phrase`New drop rod` },
  closer: { all: phrase`Closers`, add: phrase`Add closer`, fresh: phrase`New closer` },
};

const hinge = {
  low: phrase`Takes at least`,
  planned: phrase`Plan with`,
  high: phrase`Takes at most`,
};
const catches = { low: phrase`Catches from`, planned: phrase`Plan gap`, high: phrase`Catches to` };

/** What the sizes of a part are called on the screen, with lengths in the style of the site. */
export const partWords = (kind: Hardware['kind'], style: LengthStyle): PartWords => ({
  ...(kind === 'hinge' ? hinge : catches),
  postLow: phrase`Fits posts from`,
  postHigh: phrase`Posts to`,
  frameLow: phrase`Fits frames from`,
  frameHigh: phrase`Frames to`,
  pin: phrase`Face of post to pin`,
  readings: phrase`Readings`,
  write: (length) => sizeText(length, style),
});

const origins = {
  measured: phrase`measured`,
  book: phrase`from the book`,
  assumed: phrase`assumed`,
} as const;

/** A fraction is not parted from its whole inches at the end of a line. */
const unparted = (text: string): string => text.replace(/ (?=\d+\/)/g, '\u00a0');

/** What a part takes up and how that is known, in one line. */
export const partLine = (part: Hardware, style: LengthStyle): string => unparted(told(part, style));

const told = (part: Hardware, style: LengthStyle): string => {
  const { kind, takes, spread, from, on } = part;
  const { write } = partWords(kind, style);
  const known = `${origins[from]}${on === '' ? '' : `, ${on}`}`;
  if (kind === 'closer') return phrase`Takes up no width, ${known}`;
  const { low, high } = takes;
  const range = low === high ? write(low) : phrase`${write(low)} to ${write(high)}`;
  const planned = write(takes.planned);
  if (kind !== 'hinge') return phrase`Catches at ${range}, planned ${planned}, ${known}`;
  return spread === 'adjustable' && low < high
    ? phrase`Takes up ${range}, planned ${planned}, can be set, ${known}`
    : phrase`Takes up ${range}, planned ${planned}, ${known}`;
};
