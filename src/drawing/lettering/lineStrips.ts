import { bearing } from '../../geometry/bearing.ts';
import { distance } from '../../geometry/distance.ts';
import { lerp } from '../../geometry/lerp.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import type { OrientedBox } from '../../geometry/orientedBox.ts';
import type { PaperPoint } from '../../geometry/point.ts';

/** Half the strip that texts keep clear along a thin line, paper inches. */
const beside = 0.02;
/** Lines are kept clear piece by piece, no longer than this, paper inches; of one a mile long no more than so many. */
const longest = 1;
const mostPieces = 60;

/** The strip along a line between two points of the paper. */
export const lineStrip = (
  from: PaperPoint,
  to: PaperPoint,
  halfHeight = beside,
): OrientedBox<'paper'> => ({
  centre: midpoint(from, to),
  halfWidth: distance(from, to) / 2,
  halfHeight,
  angle: bearing(from, to),
});

/** The strips along some lines, piece by piece. */
export const lineStrips = (
  lines: readonly (readonly [PaperPoint, PaperPoint])[],
): OrientedBox<'paper'>[] =>
  lines.flatMap(([from, to]) => {
    const count = Math.min(mostPieces, Math.max(1, Math.ceil(distance(from, to) / longest)));
    if (count === 1) return lineStrip(from, to);
    return Array.from({ length: count }, (_, n) =>
      lineStrip(lerp(from, to, n / count), lerp(from, to, (n + 1) / count)),
    );
  });
