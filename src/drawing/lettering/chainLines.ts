import { moved } from '../../geometry/moved.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { radians } from '../../units/radians.ts';
import type { Atom } from '../atom.ts';
import { segmentsOutline } from '../explode/polylineOutline.ts';
import { pens } from '../pens.ts';
import { chainEnds, onLine, type ChainLine } from './chainLine.ts';

/** Beyond the dimension line, half a slash; paper inches. */
const beyond = 0.05;
const slash = 0.045;

type Ends = readonly [PaperPoint, PaperPoint];

/**
 * The thin lines of a tier one by one, for letters to keep off: its dimension line and extension lines.
 * Those of points `within` a group end at the dimension line.
 */
export const chainLines = (line: ChainLine, within: readonly PaperPoint[]): Ends[] => {
  const { points, out, off, from: begin } = line;
  const [from, to] = chainEnds(line).map((point) => onLine(line, point));
  if (from === undefined || to === undefined) return [];
  const reach = (point: PaperPoint): number => (within.includes(point) ? off : off + beyond);
  const extensions = points.map((point): Ends => [
    onLine({ out, off: begin }, point),
    onLine({ out, off: reach(point) }, point),
  ]);
  return [[from, to], ...extensions];
};

/** A tier as drawn: its thin lines, and a 45° slash at each point. */
export const chainAtoms = (line: ChainLine, within: readonly PaperPoint[]): Atom[] => {
  const lines = chainLines(line, within);
  if (lines.length === 0) return [];
  const { points, along } = line;
  const tilt = Math.atan2(along.y, along.x) - Math.PI / 4;
  const slashes = points.map((point): Ends => {
    const at = onLine(line, point);
    return [moved(at, radians(tilt), -slash), moved(at, radians(tilt), slash)];
  });
  return [
    { do: 'stroke', pen: pens.dimension, outline: segmentsOutline(lines) },
    { do: 'stroke', pen: { ...pens.dimension, width: 0.016 }, outline: segmentsOutline(slashes) },
  ];
};

/** Where the extension lines of the tier beyond begin: where those of this one end. */
export const nextFrom = ({ off }: Pick<ChainLine, 'off'>): number => off + beyond;
