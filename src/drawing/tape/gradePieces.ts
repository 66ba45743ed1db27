import type { ProfilePart, ProfileStation } from '../../engine/ground/profile.ts';

/** Ground that lies no farther than this from a straight grade is one with it, inches; ours. */
const evenness = 1;

const partOf = (from: ProfileStation, to: ProfileStation): ProfilePart => ({
  from,
  to,
  grade: (to.z - from.z) / (to.at - from.at),
});

/** The station farthest off the straight between two others, and how far; inches. */
const farthestOff = (stations: readonly ProfileStation[], part: ProfilePart) =>
  stations.reduce(
    (most, { at, z }, place) => {
      const off = Math.abs(z - (part.from.z + (at - part.from.at) * part.grade));
      return off > most.off ? { place, off } : most;
    },
    { place: 0, off: 0 },
  );

/**
 * Rising stations as few even grades: parted where the ground lies more than an inch off the
 * straight, there where it lies the farthest off. Fewer than two stations have none.
 */
export const gradePieces = (stations: readonly ProfileStation[]): ProfilePart[] => {
  const [first, last] = [stations.at(0), stations.at(-1)];
  if (first === undefined || last === undefined || first.at >= last.at) return [];
  const part = partOf(first, last);
  const { place, off } = farthestOff(stations, part);
  return off <= evenness
    ? [part]
    : [...gradePieces(stations.slice(0, place + 1)), ...gradePieces(stations.slice(place))];
};
