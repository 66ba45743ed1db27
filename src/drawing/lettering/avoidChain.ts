import { bearing } from '../../geometry/bearing.ts';
import { distance } from '../../geometry/distance.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import type { Projection } from '../projection.ts';
import { chainEnds, chainLineOf, onLine, toTotal, type ChainPrimitive } from './chainLine.ts';
import type { Lettering } from './lettering.ts';

/** Half the strip that is kept clear along a line of a chain, paper inches. */
const beside = 0.02;

/**
 * Keeps names off the dimension and extension lines of a chain that is still to be lettered, as
 * far as there is other room.
 */
export const avoidChain = (
  chain: ChainPrimitive,
  projection: Projection,
  room: Pick<Lettering, 'avoid'>,
): void => {
  const line = chainLineOf(chain, projection);
  if (line === null) return;
  const offs = chain.total === null ? [line.off] : [line.off, line.off + toTotal];
  const along = offs.map((off) => chainEnds(line).map((point) => onLine({ ...line, off }, point)));
  const across = line.points.map((point) => [point, onLine(line, point)]);
  for (const [from, to] of [...along, ...across]) {
    if (from === undefined || to === undefined) continue;
    room.avoid({
      centre: midpoint(from, to),
      halfWidth: distance(from, to) / 2,
      halfHeight: beside,
      angle: bearing(from, to),
    });
  }
};
