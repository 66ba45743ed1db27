import { slack } from '../../geometry/tolerance.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Profile, ProfileStation } from './profile.ts';

const within = (stations: readonly ProfileStation[], at: number): Inches | null => {
  const next = stations.findIndex((station) => station.at >= at);
  const [from, to] = [stations[next - 1], stations[next]];
  if (to === undefined || from === undefined || to.at === at) return to?.z ?? null;
  return inches(from.z + ((to.z - from.z) * (at - from.at)) / (to.at - from.at));
};

/**
 * The height of the ground at a station of a profile, inches; null where it is not known. A
 * station that rounding has put beyond the end of a known part is at its end.
 */
export const profileHeight = ({ known }: Pick<Profile, 'known'>, at: Inches): Inches | null => {
  const part = known.find((stations) => {
    const [first, last] = [stations.at(0)?.at ?? Infinity, stations.at(-1)?.at ?? -Infinity];
    return at >= first - slack && at <= last + slack;
  });
  const last = part?.at(-1)?.at ?? at;
  return part === undefined ? null : within(part, Math.min(at, last));
};
