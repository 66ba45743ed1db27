import { distance } from '../../geometry/distance.ts';
import { lerp } from '../../geometry/lerp.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Segment } from '../../geometry/segment.ts';
import { stationsAcross } from '../../geometry/stationsAcross.ts';
import type { Piece } from '../../geometry/throughCapsule.ts';
import { inches } from '../../units/inches.ts';
import type { Ground } from './groundOf.ts';
import { heightAt } from './heightAt.ts';
import type { Profile, ProfileStation } from './profile.ts';

/** A piece between two stations; its ends have heights where all of it is known. */
interface Link extends Piece {
  readonly ends: readonly [ProfileStation, ProfileStation] | null;
}

const linksOf = (ground: Ground, leg: Segment<'site'>, start: number): Link[] => {
  const length = distance(leg.start, leg.end);
  const heightOf = (along: number) => heightAt(ground, lerp(leg.start, leg.end, along / length));
  const stations = stationsAcross(ground.mesh, leg);
  const heights = stations.map((along) => (length === 0 ? null : heightOf(along)));
  return stations.slice(1).map((end, n) => {
    const begin = stations[n] ?? 0;
    const [from, to] = [inches(start + begin), inches(start + end)];
    const [low, high] = [heights[n] ?? null, heights[n + 1] ?? null];
    if (low === null || high === null || heightOf((begin + end) / 2) === null) {
      return { from, to, ends: null };
    }
    return {
      from,
      to,
      ends: [
        { at: from, z: low },
        { at: to, z: high },
      ],
    };
  });
};

const joined = (links: readonly Link[]): Pick<Profile, 'known' | 'unknown'> => {
  const known: ProfileStation[][] = [];
  const unknown: Piece[] = [];
  links.forEach(({ from, to, ends }, n) => {
    const goesOn = n > 0 && (links[n - 1]?.ends === null) === (ends === null);
    if (ends !== null && goesOn) known.at(-1)?.push(ends[1]);
    else if (ends !== null) known.push([...ends]);
    else unknown.push({ from: (goesOn ? unknown.pop() : undefined)?.from ?? from, to });
  });
  return { known, unknown };
};

/**
 * The ground under a chain of points: a station wherever the way passes an edge or a corner of the
 * triangles or one of the points. Exact, but that stations are 1/64 in apart or more. Points on one
 * place count once; fewer than two places have a profile without length.
 */
export const profileAlong = (ground: Ground, points: readonly SitePoint[]): Profile => {
  let length = 0;
  const links = points.slice(1).flatMap((end, n) => {
    const leg = { start: points[n] ?? end, end };
    const found = linksOf(ground, leg, length);
    length += distance(leg.start, leg.end);
    return found;
  });
  return { length: inches(length), ...joined(links) };
};
