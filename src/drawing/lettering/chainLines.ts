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

/** A tier as drawn, and its thin lines one by one, for letters to keep off. */
export interface ChainLines {
  readonly atoms: readonly Atom[];
  readonly lines: readonly Ends[];
}

/**
 * Dimension line, extension lines and a 45° slash at each point. The extension lines of points `within`
 * a group end at the dimension line.
 */
export const chainLines = (line: ChainLine, within: readonly PaperPoint[]): ChainLines => {
  const { points, along, out, off, from: begin } = line;
  const [from, to] = chainEnds(line).map((point) => onLine(line, point));
  if (from === undefined || to === undefined) return { atoms: [], lines: [] };
  const reach = (point: PaperPoint): number => (within.includes(point) ? off : off + beyond);
  const extensions = points.map((point): Ends => [
    onLine({ out, off: begin }, point),
    onLine({ out, off: reach(point) }, point),
  ]);
  const tilt = Math.atan2(along.y, along.x) - Math.PI / 4;
  const slashes = points.map((point): Ends => {
    const at = onLine(line, point);
    return [moved(at, radians(tilt), -slash), moved(at, radians(tilt), slash)];
  });
  const lines = [[from, to], ...extensions] as const;
  return {
    atoms: [
      { do: 'stroke', pen: pens.dimension, outline: segmentsOutline(lines) },
      {
        do: 'stroke',
        pen: { ...pens.dimension, width: 0.016 },
        outline: segmentsOutline(slashes),
      },
    ],
    lines,
  };
};

/** Where the extension lines of the tier beyond begin: where those of this one end. */
export const nextFrom = ({ off }: Pick<ChainLine, 'off'>): number => off + beyond;
