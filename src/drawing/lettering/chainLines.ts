import { moved } from '../../geometry/moved.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { radians } from '../../units/radians.ts';
import type { Atom } from '../atom.ts';
import { segmentsOutline } from '../explode/polylineOutline.ts';
import { pens } from '../pens.ts';

/** A dimension line beside points in a row: where it runs and which points it ticks. */
export interface ChainLine {
  readonly points: readonly PaperPoint[];
  /** Unit vectors on the paper: along the chain and out from the fence. */
  readonly along: PaperPoint;
  readonly out: PaperPoint;
  /** From the points to the line, paper inches. */
  readonly off: number;
}

/** Clear of the thing dimensioned, beyond the dimension line, half a slash; paper inches. */
const clear = 0.05;
const beyond = 0.05;
const slash = 0.045;

/** A point of a chain moved out to its dimension line. */
export const onLine = (
  { out, off }: Pick<ChainLine, 'out' | 'off'>,
  at: PaperPoint,
): PaperPoint => ({
  x: at.x + out.x * off,
  y: at.y + out.y * off,
});

/** Dimension line, extension lines and a 45° slash at each point. */
export const chainLines = (line: ChainLine): Atom[] => {
  const { points, along, out, off } = line;
  const ends = [points[0], points.at(-1)].flatMap((point) =>
    point === undefined ? [] : [onLine(line, point)],
  );
  const [from, to] = ends;
  if (from === undefined || to === undefined) return [];
  const extensions = points.map(
    (point) =>
      [onLine({ out, off: clear }, point), onLine({ out, off: off + beyond }, point)] as const,
  );
  const tilt = Math.atan2(along.y, along.x) - Math.PI / 4;
  const slashes = points.map((point) => {
    const at = onLine(line, point);
    return [moved(at, radians(tilt), -slash), moved(at, radians(tilt), slash)] as const;
  });
  return [
    { do: 'stroke', pen: pens.dimension, outline: segmentsOutline([[from, to], ...extensions]) },
    {
      do: 'stroke',
      pen: { ...pens.dimension, width: 0.016 },
      outline: segmentsOutline(slashes),
    },
  ];
};
