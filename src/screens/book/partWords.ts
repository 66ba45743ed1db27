import type { Hardware } from '../../site/hardware.ts';
import type { PartWords } from '../../site/partFault.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { sizeText } from '../fields/sizeText.ts';

/** Each kind of part, one and several. */
export const kindNames: Readonly<Record<Hardware['kind'], readonly [one: string, all: string]>> = {
  hinge: ['hinge', 'Hinges'],
  latch: ['latch', 'Latches'],
  'drop rod': ['drop rod', 'Drop rods'],
  closer: ['closer', 'Closers'],
};

const hinge = { low: 'Takes at least', planned: 'Plan with', high: 'Takes at most' };
const catches = { low: 'Catches from', planned: 'Plan gap', high: 'Catches to' };

/** What the sizes of a part are called on the screen, with lengths in the style of the site. */
export const partWords = (kind: Hardware['kind'], style: LengthStyle): PartWords => ({
  ...(kind === 'hinge' ? hinge : catches),
  postLow: 'Fits posts from',
  postHigh: 'Posts to',
  frameLow: 'Fits frames from',
  frameHigh: 'Frames to',
  pin: 'Face of post to pin',
  readings: 'Readings',
  write: (length) => sizeText(length, style),
});

const origins = { measured: 'measured', book: 'from the book', assumed: 'assumed' } as const;

/** A fraction is not parted from its whole inches at the end of a line. */
const unparted = (text: string): string => text.replace(/ (?=\d+\/)/g, '\u00a0');

/** What a part takes up and how that is known, in one line. */
export const partLine = (part: Hardware, style: LengthStyle): string => unparted(told(part, style));

const told = (part: Hardware, style: LengthStyle): string => {
  const { kind, takes, spread, from, on } = part;
  const { write } = partWords(kind, style);
  const known = `${origins[from]}${on === '' ? '' : `, ${on}`}`;
  if (kind === 'closer') return `Takes up no width, ${known}`;
  const { low, planned, high } = takes;
  const verb = kind === 'hinge' ? 'Takes up' : 'Catches at';
  const range = low === high ? write(low) : `${write(low)} to ${write(high)}`;
  const how = kind === 'hinge' && spread === 'adjustable' && low < high ? ', can be set' : '';
  return `${verb} ${range}, planned ${write(planned)}${how}, ${known}`;
};
