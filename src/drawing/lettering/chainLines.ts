import { moved } from '../../geometry/moved.ts';
import { radians } from '../../units/radians.ts';
import type { Atom } from '../atom.ts';
import { segmentsOutline } from '../explode/polylineOutline.ts';
import { pens } from '../pens.ts';
import { chainEnds, onLine, type ChainLine } from './chainLine.ts';

/** Clear of the thing dimensioned, beyond the dimension line, half a slash; paper inches. */
const clear = 0.05;
const beyond = 0.05;
const slash = 0.045;

/** Dimension line, extension lines and a 45° slash at each point. */
export const chainLines = (line: ChainLine): Atom[] => {
  const { points, along, out, off } = line;
  const ends = chainEnds(line).map((point) => onLine(line, point));
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
