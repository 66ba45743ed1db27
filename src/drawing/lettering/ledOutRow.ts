import { dot } from '../../geometry/dot.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import type { OrientedBox } from '../../geometry/orientedBox.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { subtract } from '../../geometry/subtract.ts';
import { cheapest } from './cheapest.ts';
import { weigh, type CoverCost } from './coverCost.ts';
import { chainAngle, onLine, type ChainLine } from './chainLine.ts';
import { pieceStyle, type ChainPiece } from './chainPiece.ts';
import { labelAt, labelBox, labelSize, type Label, type LabelSize } from './label.ts';
import { leaderAtoms, leaderLine, type Leader } from './leaderLine.ts';
import type { Lettered } from './lettered.ts';
import type { Lettering } from './lettering.ts';
import { readable } from './readable.ts';
import { spread } from './spread.ts';

/** Rows beyond the outermost tier of a chain, the nearest first, and the room between texts; paper inches. */
const rows = [0.3, 0.5, 0.75, 1] as const;
const between = 0.12;
/** How far a row is shifted along its chain to find room, paper inches. */
const shifts = [0, 0.25, -0.25, 0.5, -0.5, 1, -1] as const;

/** Where a row may stand, the most wished for first. */
const places = rows.flatMap((out) => shifts.map((shift) => ({ out, shift })));

type Place = (typeof places)[number];

/**
 * A dimension had better stand near what it measures than clear of a line, but farther out than on
 * a wall, or with a leader through another text: that is as bad as the next row but for a shift.
 */
const nextRow = shifts.length + 1;
const cost: CoverCost = {
  thin: 1,
  chain: nextRow,
  solid: nextRow,
  heavy: nextRow,
  leader: 2 * nextRow,
};
const costOfCrossing = 2 * nextRow;

/** Room for texts that are placed together. */
type Room = Pick<Lettering, 'isFree' | 'crosses' | 'leaders' | 'covers' | 'take' | 'avoid'>;

/** A row that found its room. */
export interface LedOutRow extends Omit<Lettered, 'left'> {
  readonly labels: readonly Label[];
  readonly leaders: readonly Leader[];
}

/** A text of a row: how far along the chain it wishes to stand, and the place on it that it is led out from. */
interface LedOut extends LabelSize {
  readonly piece: ChainPiece;
  readonly at: PaperPoint;
  readonly station: number;
}

/**
 * Texts beyond a chain, each led out from its piece, in one row and in the order of their pieces,
 * so that no leader crosses another. Null where no row has room; else the room is taken.
 */
export const ledOutRow = (
  line: ChainLine,
  pieces: readonly ChainPiece[],
  room: Room,
): LedOutRow | null => {
  const origin = onLine(line, line.points[0] ?? { x: 0, y: 0 });
  const row = pieces
    .map((piece): LedOut => {
      const at = onLine(line, midpoint(piece.from, piece.to));
      const size = labelSize(pieceStyle(piece));
      return { piece, at, ...size, station: dot(subtract(at, origin), line.along) };
    })
    .sort((a, b) => a.station - b.station);
  const middles = spread(
    row.map(({ station, width }) => ({ middle: station, width: width + between })),
  );
  const angle = readable(chainAngle(line));
  const boxOf = ({ out, shift }: Place, one: LedOut, n: number): OrientedBox<'paper'> => {
    const [along, away] = [(middles[n] ?? 0) + shift, line.beyond + out + one.height / 2];
    const middle: PaperPoint = {
      x: origin.x + line.along.x * along + line.out.x * away,
      y: origin.y + line.along.y * along + line.out.y * away,
    };
    return labelBox(one, middle, angle);
  };
  // null where one text has no room, and no more than told beyond the limit
  const costAt = (place: Place, limit: number): number | null => {
    const boxes: OrientedBox<'paper'>[] = [];
    for (const one of row) {
      const box = boxOf(place, one, boxes.length);
      if (!room.isFree(box)) return null;
      boxes.push(box);
    }
    let [sum, n] = [0, 0];
    for (const box of boxes) {
      sum += weigh(room.covers(box, { cost, limit: limit - sum }), cost);
      if (sum > limit) return sum;
      const { strip } = leaderLine(row[n++]?.at ?? origin, box);
      sum += (room.crosses(strip) + room.leaders(strip)) * costOfCrossing;
      if (sum > limit) return sum;
    }
    return sum;
  };
  const best = cheapest(places, costAt);
  if (best === null) return null;
  const found = row.map((one, n) => ({ ...one, box: boxOf(best, one, n) }));
  const labels = found.map(({ piece, box }) => labelAt(pieceStyle(piece), box.centre, angle));
  const leaders = found.map(({ at, box }) => leaderLine(at, box));
  for (const { box } of labels) room.take(box);
  for (const { strip } of leaders) room.avoid(strip, 'leader');
  return {
    lines: leaders.flatMap(leaderAtoms),
    texts: labels.flatMap(({ texts }) => texts),
    labels,
    leaders,
  };
};
