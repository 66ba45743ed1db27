import { legsOf } from '../../../site/legsOf.ts';
import type { Site } from '../../../site/site.ts';
import type { TourSeen } from '../../../store/tour.ts';

const pair = (a: string, b: string): string => [a, b].toSorted().join(' ');

/** How things stand in a yard, by what the steps of the tour go by. */
export const seenOf = ({ lines, observations, gates }: Site): TourSeen => {
  const tapes = new Set(
    Object.values(observations).flatMap((one) =>
      one.kind === 'tape' ? [pair(one.from, one.to)] : [],
    ),
  );
  const fences = Object.entries(lines).toSorted(([a], [b]) => (a < b ? -1 : 1));
  const legs = fences.flatMap(([, line]) => legsOf(line));
  return {
    taped: legs.filter(({ start, end }) => tapes.has(pair(start, end))).length,
    gates: Object.keys(gates).length,
    hooks: fences.map(([id, { hook }]) => `${id} ${hook}`).join(', '),
  };
};
