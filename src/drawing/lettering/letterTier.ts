import { distance } from '../../geometry/distance.ts';
import { lerp } from '../../geometry/lerp.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import type { OrientedBox } from '../../geometry/orientedBox.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import type { Atom, Text } from '../atom.ts';
import { cheapest } from './cheapest.ts';
import { usualCost, weigh } from './coverCost.ts';
import { chainAngle, chainEnds, onLine, type ChainLine } from './chainLine.ts';
import { pieceStyle, type ChainPiece } from './chainPiece.ts';
import type { ChainTier } from './chainTiers.ts';
import { labelAt, labelBox, labelSize, type Label } from './label.ts';
import { ledOutRow } from './ledOutRow.ts';
import { seenPart } from './seenPart.ts';
import type { trial } from './lettering.ts';
import { readable } from './readable.ts';

/** Room tried for one chain; it is kept only if every text of the chain finds a place. */
export type Trial = ReturnType<typeof trial>;

/** A tier that found room for all its texts, and what it takes up on the paper. */
export interface LetteredTier {
  readonly line: ChainLine;
  /** Points of the tier whose extension lines end at its dimension line. */
  readonly within: readonly PaperPoint[];
  /** Of the texts that are led out. */
  readonly lines: readonly Atom[];
  readonly texts: readonly Text[];
  readonly leaders: readonly OrientedBox<'paper'>[];
  /** Whether all of it is seen. */
  readonly seen: 'all' | 'a part';
}

/** Room beside the letters in a piece, and from the dimension line to them; paper inches. */
const beside = 0.05;
const over = 0.015;
/** Ticks within a piece reach so far beyond the dimension line, paper inches. */
const ticks = 0.04;

/** How far a text may be off the middle of its piece, paper inches; less than the least is not worth it. */
const slipsTried = [0.7, 1.4, 2.4] as const;
const leastSlip = 0.2;

/** How far along its piece a text is tried, where it can be so far off the middle; the nearest first. */
const slipsIn = (play: number): readonly number[] => {
  if (play < leastSlip) return [0];
  const within = slipsTried.filter((slip) => slip <= play);
  return [0, ...(within.length > 0 ? within : [play]).flatMap((slip) => [slip, -slip])];
};

/** A shorter tier leads nothing out, paper inches; more texts led out are no chain that one can read. */
const leastLedOut = 0.35;
const mostLeaders = 4;

/**
 * How far up from the dimension line, as it is read, the middle of a text may stand: above it, else
 * below. Bays written as one have their text beyond the line, clear of their extension lines; a text of
 * two lines has the line between them.
 */
const risesOf = (line: ChainLine, piece: ChainPiece, height: number): readonly number[] => {
  if (piece.text.includes('\n')) return [0];
  const up = height / 2 + over;
  if (piece.within === undefined || piece.within.length === 0) return [up, -up];
  const angle = readable(chainAngle(line));
  const outwards = -line.out.x * Math.sin(angle) - line.out.y * Math.cos(angle) > 0 ? 1 : -1;
  return [outwards * (up + ticks)];
};

/** Whether a text is too long for its piece, wherever that stands. */
const isTooLong = (piece: ChainPiece): boolean =>
  labelSize(pieceStyle(piece)).width + 2 * beside > distance(piece.from, piece.to);

const placeIn = (line: ChainLine, piece: ChainPiece, room: Trial): Label | null => {
  if (isTooLong(piece)) return null;
  const look = pieceStyle(piece);
  const size = labelSize(look);
  const long = distance(piece.from, piece.to);
  const angle = readable(chainAngle(line));
  const middle = onLine(line, midpoint(piece.from, piece.to));
  const play = (long - size.width) / 2 - beside;
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  const places = slipsIn(play).flatMap((along) =>
    risesOf(line, piece, size.height).map((up): PaperPoint => {
      const x = middle.x + along * line.along.x - up * sin;
      return { x, y: middle.y + along * line.along.y - up * cos };
    }),
  );
  const best = cheapest(places, (at, limit) => {
    const box = labelBox(size, at, angle);
    return room.isFree(box) ? weigh(room.covers(box, { cost: usualCost, limit }), usualCost) : null;
  });
  return best === null ? null : labelAt(look, best, angle);
};

/** A text in its piece of a dimension line, its shorter one where that is too long; null if that is too. */
export const inLine = (line: ChainLine, piece: ChainPiece, room: Trial): Label | null => {
  const place = placeIn(line, piece, room);
  if (place !== null || piece.shorter === undefined) return place;
  return placeIn(line, { ...piece, text: piece.shorter }, room);
};

/** The length of a dimension line on the paper, inches. */
export const lengthOnPaper = (line: Pick<ChainLine, 'points'>): number => {
  const [first, last] = chainEnds(line);
  return first === undefined || last === undefined ? 0 : distance(first, last);
};

/** True where the window shows a piece from end to end. */
export const isSeen = (line: ChainLine, { from, to }: ChainPiece, room: Trial): boolean =>
  room.sees(onLine(line, from)) && room.sees(onLine(line, to));

/** Points along a dimension line that are looked at, both ends among them. */
const looks = 24;

/** True where the fence is seen, if only a part of it, and nothing of a tier beside it. */
const isOffTheWindow = (line: ChainLine, room: Pick<Trial, 'sees'>): boolean => {
  const [from, to] = chainEnds(line);
  if (from === undefined || to === undefined) return false;
  const at = (n: number): PaperPoint => lerp(from, to, n / looks);
  // nearly every tier is seen, most of them at an end
  if (room.sees(onLine(line, to))) return false;
  for (let n = 0; n < looks; n++) if (room.sees(onLine(line, at(n)))) return false;
  for (let n = 0; n <= looks; n++) if (room.sees(at(n))) return true;
  return false;
};

/**
 * Labels for the pieces of one tier as far as the window shows them whole: on their pieces, else led
 * out; when those do not all find room it says whether they might elsewhere, or are too many too short
 * pieces wherever the tier stands. A long piece that runs out of the window has its text on what is
 * seen of it, where that has room.
 */
export const letterTier = (
  { line, pieces }: ChainTier,
  room: Trial,
): LetteredTier | 'no room' | 'too short' => {
  if (isOffTheWindow(line, room)) return 'no room';
  const seen: ChainPiece[] = [];
  const inPart: ChainPiece[] = [];
  for (const piece of pieces) {
    if (isSeen(line, piece, room)) seen.push(piece);
    else {
      const part = seenPart(line, piece, room);
      if (part !== null) inPart.push(part);
    }
  }
  const labels: Label[] = [];
  const tight: ChainPiece[] = [];
  for (const piece of seen) {
    const label = inLine(line, piece, room);
    if (label === null) tight.push({ ...piece, text: piece.shorter ?? piece.text });
    else {
      room.take(label.box);
      labels.push(label);
    }
  }
  // what cannot be read here is read where more of it is seen
  for (const piece of inPart) {
    const label = inLine(line, piece, room);
    if (label === null) continue;
    room.take(label.box);
    labels.push(label);
  }
  const mayEver = lengthOnPaper(line) >= leastLedOut;
  if (tight.filter(isTooLong).length > (mayEver ? mostLeaders : 0)) return 'too short';
  const mayLead = tight.length <= mostLeaders && mayEver;
  const row = mayLead && tight.length > 0 ? ledOutRow(line, tight, room) : null;
  if (row === null && tight.length > 0) return 'no room';
  const all = [...labels, ...(row?.labels ?? [])];
  return {
    line,
    within: pieces.flatMap(({ within = [] }) => within),
    lines: row?.lines ?? [],
    texts: all.flatMap(({ texts }) => texts),
    leaders: (row?.leaders ?? []).map(({ strip }) => strip),
    seen: seen.length < pieces.length ? 'a part' : 'all',
  };
};
