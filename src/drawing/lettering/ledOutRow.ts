import { dot } from '../../geometry/dot.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { subtract } from '../../geometry/subtract.ts';
import { bestTogether } from './bestTogether.ts';
import { chainAngle, onLine, toTotal, type ChainLine } from './chainLine.ts';
import { pieceStyle, type ChainPiece } from './chainPiece.ts';
import { labelAt, labelSize, type Label } from './label.ts';
import { leaderLine } from './leaderLine.ts';
import type { Lettered } from './lettered.ts';
import type { Lettering } from './lettering.ts';
import { readable } from './readable.ts';
import { spread } from './spread.ts';

/** Rows beyond the total of a chain, the nearest first, and the room between texts; paper inches. */
const rows = [0.3, 0.5, 0.75, 1] as const;
const between = 0.12;
/** How far a row is shifted along its chain to find room, paper inches. */
const shifts = [0, 0.25, -0.25, 0.5, -0.5, 1, -1] as const;

/** A dimension had better stand near what it measures than clear of a line. */
const costOfCovering = 1;

/** Room for texts that are placed together. */
type Room = Pick<Lettering, 'isFree' | 'covers' | 'take'>;

/**
 * Texts beyond a chain, each led out from its piece, in one row and in the order of their pieces,
 * so that no leader crosses another. Null where no row has room; else the room is taken.
 */
export const ledOutRow = (
  line: ChainLine,
  pieces: readonly ChainPiece[],
  room: Room,
): Omit<Lettered, 'left'> | null => {
  const origin = onLine(line, line.points[0] ?? { x: 0, y: 0 });
  const stations = pieces
    .map((piece) => {
      const at = onLine(line, midpoint(piece.from, piece.to));
      const size = labelSize(pieceStyle(piece));
      return { piece, at, ...size, station: dot(subtract(at, origin), line.along) };
    })
    .sort((a, b) => a.station - b.station);
  const middles = spread(
    stations.map(({ station, width }) => ({ middle: station, width: width + between })),
  );
  const angle = readable(chainAngle(line));
  const labelsAt = (out: number, shift: number): Label[] =>
    stations.map(({ piece, height }, n) => {
      const [along, away] = [(middles[n] ?? 0) + shift, toTotal + out + height / 2];
      const middle: PaperPoint = {
        x: origin.x + line.along.x * along + line.out.x * away,
        y: origin.y + line.along.y * along + line.out.y * away,
      };
      return labelAt(pieceStyle(piece), middle, angle);
    });
  const places = rows.flatMap((out) => shifts.map((shift) => labelsAt(out, shift)));
  const best = bestTogether(room, places, costOfCovering);
  if (best === null) return null;
  for (const { box } of best) room.take(box);
  return {
    lines: best.flatMap(({ box }, n) => leaderLine(stations[n]?.at ?? origin, box)),
    texts: best.flatMap(({ texts }) => texts),
  };
};
