import { distance } from '../../geometry/distance.ts';
import { lineOffset } from '../../geometry/lineOffset.ts';
import { spot } from '../../geometry/tolerance.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Network } from './networks.ts';
import type { Sighting, Spot } from './sighting.ts';

/** The marks that a mark is taped to, but for one observation. */
const tapedTo = ({ spots, sightings }: Network, id: MarkId, without: Sighting): Spot[] =>
  sightings.flatMap(({ id: own, seen }) => {
    if (own === without.id || seen.kind !== 'tape') return [];
    if (seen.from !== id && seen.to !== id) return [];
    return spots.get(seen.from === id ? seen.to : seen.from) ?? [];
  });

/** The two that are farthest from each other; null where all are on one spot. */
const base = (spots: readonly Spot[]): readonly [Spot, Spot] | null => {
  let [found, longest]: [readonly [Spot, Spot] | null, number] = [null, spot];
  for (const [n, a] of spots.entries()) {
    for (const b of spots.slice(n + 1)) {
      const length = distance(a, b);
      if (length > longest) [found, longest] = [[a, b], length];
    }
  }
  return found;
};

const mirrored = (at: Spot, [a, b]: readonly [Spot, Spot]): Spot => {
  const off = lineOffset<'site'>(at, a, b);
  const length = distance(a, b);
  const twice = (2 * off) / length;
  return { ...at, x: at.x + twice * (b.y - a.y), y: at.y - twice * (b.x - a.x) };
};

/**
 * The network with a mark of one tape on the other side of the line through those that it is taped to
 * besides: a tape that is far too long or too short pulls its marks over to where the others fit too.
 * One start for each end of the tape that can be; none for what is no tape.
 */
export const otherSides = (network: Network, sighting: Sighting): Network[] => {
  const { seen } = sighting;
  if (seen.kind !== 'tape') return [];
  return [seen.from, seen.to].flatMap((id) => {
    const at = network.spots.get(id);
    const line = base(tapedTo(network, id, sighting));
    if (at === undefined || at.fixed || line === null) return [];
    return [{ ...network, spots: new Map(network.spots).set(id, mirrored(at, line)) }];
  });
};
