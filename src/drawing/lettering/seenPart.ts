import { distance } from '../../geometry/distance.ts';
import { lerp } from '../../geometry/lerp.ts';
import { onLine, type ChainLine } from './chainLine.ts';
import type { ChainPiece } from './chainPiece.ts';
import type { Lettering } from './lettering.ts';

/** A piece is looked at in so many places; what is seen of it bears its text from so much on, paper inches. */
const looks = 200;
const leastSeen = 1.2;
/** More than rounding makes of lengths, paper inches. */
const hair = 1e-6;

/**
 * A piece that runs out of the window as far as it is seen, for its text to stand there: the same lengths are
 * said of all of it. Null where little of it is seen, or all of it lies outside.
 */
export const seenPart = (
  line: ChainLine,
  piece: ChainPiece,
  { sees }: Pick<Lettering, 'sees'>,
): ChainPiece | null => {
  const { from, to } = piece;
  // of a short piece no part is long enough
  if (distance(from, to) < leastSeen - hair) return null;
  const isSeen = (n: number): boolean => sees(onLine(line, lerp(from, to, n / looks)));
  // a window is convex: what is seen of a straight line is in one
  let [first, last] = [0, looks];
  while (first <= looks && !isSeen(first)) first += 1;
  if (first > looks) return null;
  while (!isSeen(last)) last -= 1;
  const part = { from: lerp(from, to, first / looks), to: lerp(from, to, last / looks) };
  return distance(part.from, part.to) < leastSeen ? null : { ...piece, ...part };
};
