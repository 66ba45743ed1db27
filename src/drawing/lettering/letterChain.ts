import { distance } from '../../geometry/distance.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import type { Projection } from '../projection.ts';
import { bestOf } from './bestOf.ts';
import {
  chainAngle,
  chainEnds,
  chainLineOf,
  onLine,
  toTotal,
  type ChainLine,
  type ChainPrimitive,
} from './chainLine.ts';
import { chainLines } from './chainLines.ts';
import { pieceStyle, type ChainPiece } from './chainPiece.ts';
import { labelAt, labelSize, type Label } from './label.ts';
import { ledOutRow } from './ledOutRow.ts';
import { unlettered, type Lettered } from './lettered.ts';
import { trial, type Lettering } from './lettering.ts';
import { readable } from './readable.ts';

/** Room beside the letters in a piece, paper inches. */
const beside = 0.05;

/** How far a text may be off the middle of its piece, paper inches; less is not worth it. */
const mostSlip = 0.7;
const leastSlip = 0.2;

/** A shorter chain is written as its total; one shorter still is not led out either. Paper inches. */
const leastWhole = 0.8;
const leastLedOut = 0.35;

/** More texts led out than this are no longer a chain that one can read. */
const mostLeaders = 4;

/** Says that a part of a chain lies outside the window. */
const cutOff = 'cut off';

/** Room tried for one chain; it is kept only if every text of the chain finds a place. */
type Trial = ReturnType<typeof trial>;

/**
 * A text on its piece of the dimension line, above as it is read, else below, or a little off the
 * middle; null if too long.
 */
const inLine = (line: ChainLine, piece: ChainPiece, room: Trial): Label | null => {
  const look = pieceStyle(piece);
  const { width, height } = labelSize(look);
  if (width + 2 * beside > distance(piece.from, piece.to)) return null;
  const angle = readable(chainAngle(line));
  const middle = onLine(line, midpoint(piece.from, piece.to));
  const play = (distance(piece.from, piece.to) - width) / 2 - beside;
  const slips = play < leastSlip ? [0] : [0, 1, -1].map((way) => way * Math.min(play, mostSlip));
  const places = slips.flatMap((along) =>
    [1, -1].map((side) => {
      const up = side * (height / 2 + 0.015);
      const x = middle.x + along * line.along.x - up * Math.sin(angle);
      return labelAt(look, { x, y: middle.y + along * line.along.y - up * Math.cos(angle) }, angle);
    }),
  );
  return bestOf(room, places);
};

const lengthOnPaper = ({ points }: ChainLine): number => {
  const [first, last] = [points[0], points.at(-1)];
  return first === undefined || last === undefined ? 0 : distance(first, last);
};

/** True where the window shows a piece from end to end. */
const isSeen = (line: ChainLine, { from, to }: ChainPiece, room: Trial): boolean =>
  room.sees(onLine(line, from)) && room.sees(onLine(line, to));

/**
 * Labels for the pieces of one dimension line as far as the window shows them whole: on their
 * pieces, else led out; null when those do not all find room.
 */
const letterLine = (
  line: ChainLine,
  pieces: readonly ChainPiece[],
  room: Trial,
): Lettered | null => {
  const seen = pieces.filter((piece) => isSeen(line, piece, room));
  const texts: Lettered['texts'][number][] = [];
  const tight: ChainPiece[] = [];
  for (const piece of seen) {
    const label = inLine(line, piece, room);
    if (label === null) tight.push(piece);
    else room.take(label.box);
    texts.push(...(label?.texts ?? []));
  }
  const mayLead = tight.length <= mostLeaders && lengthOnPaper(line) >= leastLedOut;
  const row = mayLead ? ledOutRow(line, tight, room) : null;
  if (row === null && tight.length > 0) return null;
  const left = seen.length < pieces.length ? [cutOff] : [];
  return {
    lines: [...chainLines(line), ...(row?.lines ?? [])],
    texts: [...texts, ...(row?.texts ?? [])],
    left,
  };
};

/** The chain's pieces; where those of a group do not all fit singly, the group as one piece. */
const piecesOf = (chain: ChainPrimitive, line: ChainLine, room: Trial): ChainPiece[] => {
  const single = chain.texts.flatMap((text, n): ChainPiece[] => {
    const [from, to] = [line.points[n], line.points[n + 1]];
    return from === undefined || to === undefined ? [] : [{ from, to, text }];
  });
  const isTight = (piece: ChainPiece): boolean =>
    isSeen(line, piece, room) && inLine(line, piece, room) === null;
  const crowded = (chain.groups ?? []).filter(({ from, to }) =>
    single.slice(from, to).some(isTight),
  );
  const grouped = crowded.flatMap(({ from, to, text }) => {
    const [first, last] = [single[from], single[to - 1]];
    return first === undefined || last === undefined
      ? []
      : [{ from: first.from, to: last.to, text }];
  });
  const covered = (n: number): boolean => crowded.some(({ from, to }) => n >= from && n < to);
  return [...single.filter((_, n) => !covered(n)), ...grouped];
};

const totalPiece = (line: ChainLine, text: string): ChainPiece[] => {
  const [from, to] = chainEnds(line);
  return from === undefined || to === undefined ? [] : [{ from, to, text }];
};

/** Pieces on one line and the total on the next one out. */
const whole = (chain: ChainPrimitive, line: ChainLine, room: Trial): Lettered | null => {
  const inner = letterLine(line, piecesOf(chain, line, room), room);
  if (inner === null || chain.total === null) return inner;
  const outer = { ...line, points: chainEnds(line), off: line.off + toTotal };
  const total = letterLine(outer, totalPiece(line, chain.total), room);
  if (total === null) return null;
  return {
    lines: [...inner.lines, ...total.lines],
    texts: [...inner.texts, ...total.texts],
    left: [...inner.left, ...total.left],
  };
};

/**
 * Finds places for all texts of a chain and takes the room: every piece and the total; else equal
 * bays in groups; else the total with a hint where to find its pieces; else the total alone. What finds none, or lies outside the window, is left by
 * the chain's name.
 */
export const letterChain = (
  chain: ChainPrimitive,
  projection: Projection,
  room: Lettering,
): Lettered => {
  const total = chain.total ?? chain.texts[0] ?? '';
  const left = unlettered([chain.name ?? '', total].filter((text) => text !== '').join(' '));
  const line = chainLineOf(chain, projection);
  if (line === null) return left;
  const asTotal = (text: string) => (tried: Trial) =>
    letterLine({ ...line, points: chainEnds(line) }, totalPiece(line, text), tried);
  const hints = chain.texts.length > 1 && chain.elsewhere ? [chain.elsewhere] : [];
  const tries = [
    (tried: Trial) => (lengthOnPaper(line) < leastWhole ? null : whole(chain, line, tried)),
    ...hints.map((hint) => asTotal(`${total}, ${hint}`)),
    asTotal(total),
  ];
  for (const attempt of tries) {
    const tried = trial(room);
    const lettered = attempt(tried);
    // nothing to read: the chain lies outside the window
    if (lettered === null || lettered.texts.length === 0) continue;
    tried.keep();
    return lettered.left.length > 0 ? { ...lettered, left: left.left } : lettered;
  }
  return left;
};
