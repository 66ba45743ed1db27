import { distance } from '../../geometry/distance.ts';
import { lerp } from '../../geometry/lerp.ts';
import { onLine, type ChainLine } from './chainLine.ts';
import type { ChainPiece } from './chainPiece.ts';
import type { Lettering } from './lettering.ts';

/** A piece is looked at in so many places; what is seen of it bears its text from so much on, paper inches. */
const looks = 200;
const leastSeen = 1.2;

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
  const seen = Array.from({ length: looks + 1 }, (_, n) => n).filter((n) =>
    sees(onLine(line, lerp(from, to, n / looks))),
  );
  // a window is convex: what is seen of a straight line is in one
  const [first, last] = [seen[0], seen.at(-1)];
  if (first === undefined || last === undefined) return null;
  const part = { from: lerp(from, to, first / looks), to: lerp(from, to, last / looks) };
  return distance(part.from, part.to) < leastSeen ? null : { ...piece, ...part };
};
