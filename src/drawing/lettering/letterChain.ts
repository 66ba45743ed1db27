import { bearing } from '../../geometry/bearing.ts';
import { distance } from '../../geometry/distance.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { unitVector } from '../../geometry/unitVector.ts';
import { radians } from '../../units/radians.ts';
import type { Atom } from '../atom.ts';
import type { Primitive } from '../primitive.ts';
import { toPaper, type Projection } from '../projection.ts';
import { bestOf } from './bestOf.ts';
import { chainLines, onLine, type ChainLine } from './chainLines.ts';
import { labelAt, labelSize, type Label, type LabelStyle } from './label.ts';
import { leaderLine } from './leaderLine.ts';
import { unlettered, type Lettered } from './lettered.ts';
import { trial, type Lettering } from './lettering.ts';
import { readable } from './readable.ts';

type ChainPrimitive = Extract<Primitive, { kind: 'dimension chain' }>;

/** Height of the letters, room beside them in a piece, from the chain to its total; paper inches. */
const size = 0.14;
const beside = 0.05;
const toTotal = 0.27;

/** A shorter chain is written as its total; one shorter still is not led out either. Paper inches. */
const leastWhole = 0.8;
const leastLedOut = 0.35;

/** More texts led out than this are no longer a chain that one can read. */
const mostLeaders = 4;

/** Says that a part of a chain lies outside the window. */
const cutOff = 'cut off';

const style = (text: string): LabelStyle => ({ text, size, weight: 'regular', ink: 'text' });

/** Room tried for one chain; it is kept only if every text of the chain finds a place. */
type Trial = ReturnType<typeof trial>;

/** A text and the piece between two points of the chain that it measures. */
interface Piece {
  readonly from: PaperPoint;
  readonly to: PaperPoint;
  readonly text: string;
}

const angleOf = ({ along }: ChainLine) => radians(Math.atan2(-along.y, along.x));

/** A text on its piece of the dimension line, above as it is read, else below; null if too long. */
const inLine = (line: ChainLine, piece: Piece, room: Trial): Label | null => {
  const look = style(piece.text);
  const { width, height } = labelSize(look);
  if (width + 2 * beside > distance(piece.from, piece.to)) return null;
  const angle = readable(angleOf(line));
  const middle = onLine(line, midpoint(piece.from, piece.to));
  const places = [1, -1].map((side) => {
    const up = side * (height / 2 + 0.015);
    return labelAt(
      look,
      { x: middle.x - up * Math.sin(angle), y: middle.y - up * Math.cos(angle) },
      angle,
    );
  });
  return bestOf(room, places);
};

/** A text beyond the chain, to the one side or the other of its piece. */
const ledOut = (line: ChainLine, piece: Piece, room: Trial): Label | null => {
  const look = style(piece.text);
  const { width, height } = labelSize(look);
  const middle = onLine(line, midpoint(piece.from, piece.to));
  const places = [0.3, 0.5, 0.75, 1].flatMap((out) =>
    [0, 1, -1, 2, -2].map((steps) => {
      const [along, away] = [steps * (width / 2 + 0.1), toTotal + out + height / 2];
      return labelAt(
        look,
        {
          x: middle.x + line.along.x * along + line.out.x * away,
          y: middle.y + line.along.y * along + line.out.y * away,
        },
        readable(angleOf(line)),
      );
    }),
  );
  return bestOf(room, places);
};

const lengthOnPaper = ({ points }: ChainLine): number => {
  const [first, last] = [points[0], points.at(-1)];
  return first === undefined || last === undefined ? 0 : distance(first, last);
};

/** True where the window shows a piece from end to end. */
const isSeen = (line: ChainLine, { from, to }: Piece, room: Trial): boolean =>
  room.sees(onLine(line, from)) && room.sees(onLine(line, to));

/**
 * Labels for the pieces of one dimension line as far as the window shows them whole; null when
 * those do not all find room.
 */
const letterLine = (line: ChainLine, pieces: readonly Piece[], room: Trial): Lettered | null => {
  const lines: Atom[] = [];
  const texts: Lettered['texts'][number][] = [];
  const seen = pieces.filter((piece) => isSeen(line, piece, room));
  let leaders = 0;
  for (const piece of seen) {
    const direct = inLine(line, piece, room);
    const mayLead = leaders < mostLeaders && lengthOnPaper(line) >= leastLedOut;
    const label = direct ?? (mayLead ? ledOut(line, piece, room) : null);
    if (label === null) return null;
    if (direct === null) {
      leaders += 1;
      lines.push(...leaderLine(onLine(line, midpoint(piece.from, piece.to)), label.box));
    }
    room.take(label.box);
    texts.push(...label.texts);
  }
  const left = seen.length < pieces.length ? [cutOff] : [];
  return { lines: [...chainLines(line), ...lines], texts, left };
};

/** The chain's pieces; where those of a group do not all fit singly, the group as one piece. */
const piecesOf = (chain: ChainPrimitive, line: ChainLine, room: Trial): Piece[] => {
  const single = chain.texts.flatMap((text, n): Piece[] => {
    const [from, to] = [line.points[n], line.points[n + 1]];
    return from === undefined || to === undefined ? [] : [{ from, to, text }];
  });
  const isTight = (piece: Piece): boolean =>
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

const lineOf = (chain: ChainPrimitive, projection: Projection): ChainLine | null => {
  const points = chain.points.map((point) => toPaper(projection, point));
  const [first, last] = [points[0], points.at(-1)];
  const along = first && last ? unitVector(first, last) : null;
  if (along === null) return null;
  const side = chain.off < 0 ? -1 : 1;
  const out = { x: side * along.y, y: -side * along.x };
  return { points, along, out, off: Math.abs(chain.off) };
};

const ends = (points: readonly PaperPoint[]): PaperPoint[] =>
  [points[0], points.at(-1)].flatMap((point) => point ?? []);

const totalPiece = (line: ChainLine, text: string): Piece[] => {
  const [from, to] = ends(line.points);
  return from === undefined || to === undefined ? [] : [{ from, to, text }];
};

/** Pieces on one line and the total on the next one out. */
const whole = (chain: ChainPrimitive, line: ChainLine, room: Trial): Lettered | null => {
  const inner = letterLine(line, piecesOf(chain, line, room), room);
  if (inner === null || chain.total === null) return inner;
  const outer = { ...line, points: ends(line.points), off: line.off + toTotal };
  const total = letterLine(outer, totalPiece(line, chain.total), room);
  if (total === null) return null;
  return {
    lines: [...inner.lines, ...total.lines],
    texts: [...inner.texts, ...total.texts],
    left: [...inner.left, ...total.left],
  };
};

/** Keeps names off the extension lines, as far as there is other room. */
const avoidLines = (room: Lettering, line: ChainLine): void => {
  for (const point of line.points) {
    room.avoid({
      centre: midpoint(point, onLine(line, point)),
      halfWidth: line.off / 2,
      halfHeight: 0.005,
      angle: bearing(point, onLine(line, point)),
    });
  }
};

/**
 * Finds places for all texts of a chain and takes the room: every piece and the total; else equal
 * bays in groups; else the total alone. What finds none, or lies outside the window, is left by
 * the chain's name.
 */
export const letterChain = (
  chain: ChainPrimitive,
  projection: Projection,
  room: Lettering,
): Lettered => {
  const total = chain.total ?? chain.texts[0] ?? '';
  const left = unlettered([chain.name ?? '', total].filter((text) => text !== '').join(' '));
  const line = lineOf(chain, projection);
  if (line === null) return left;
  const tries = [
    (tried: Trial) => (lengthOnPaper(line) < leastWhole ? null : whole(chain, line, tried)),
    (tried: Trial) =>
      letterLine({ ...line, points: ends(line.points) }, totalPiece(line, total), tried),
  ];
  for (const attempt of tries) {
    const tried = trial(room);
    const lettered = attempt(tried);
    // nothing to read: the chain lies outside the window
    if (lettered === null || lettered.texts.length === 0) continue;
    tried.keep();
    avoidLines(room, line);
    return lettered.left.length > 0 ? { ...lettered, left: left.left } : lettered;
  }
  return left;
};
