import { lerp } from '../../geometry/lerp.ts';
import { trackAt, trackBearing } from '../../geometry/track.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { WallTop } from '../../site/wallTop.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { radians, type Radians } from '../../units/radians.ts';
import type { Leg } from '../layout.ts';
import { isLoop, type Chain, type Stop } from './chain.ts';
import type { Turning } from './turnings.ts';

/** The legs between two neighbouring posts that stand at marks, as drawn: a run before its posts. */
export interface Course {
  /** Its line and the vertex that it starts at: no other course of its site has it. */
  readonly key: string;
  readonly chain: Chain;
  readonly legs: readonly Leg[];
  /** Where each leg begins along the course, inches. */
  readonly starts: readonly number[];
  /** The place of each leg in the two lists above. */
  readonly places: ReadonlyMap<Leg['id'], number>;
  readonly from: Stop;
  readonly to: Stop;
  readonly length: Inches;
  /** The middle ordinate of its arc; 0 for a straight one. A curved leg is a course of its own. */
  readonly bow: number;
  /** What it stands on; null for the ground. A leg on a wall is a course of its own. */
  readonly wall: WallTop | null;
}

const courseOf = (chain: Chain, first: number, count: number): Course[] => {
  const { legs, stops } = chain;
  const own = Array.from({ length: count }, (_, n) => legs[(first + n) % legs.length]);
  const from = stops[first];
  const to = stops[(first + count) % stops.length];
  const known = own.filter((leg) => leg !== undefined);
  if (from === undefined || to === undefined || known.length === 0) return [];
  const starts: number[] = [];
  let along = 0;
  for (const leg of known) {
    starts.push(along);
    along += leg.length;
  }
  const places = new Map(known.map(({ id }, n) => [id, n]));
  const wall = chain.line.walls[known[0]?.id ?? 'vertex:'] ?? null;
  const bow = known[0]?.bow ?? 0;
  const key = `${chain.id}:${from.vertex}`;
  const length = inches(along);
  return [{ key, chain, legs: known, starts, places, from, to, length, bow, wall }];
};

/**
 * A chain cut at every stop that needs a post. A loop begins at its first such stop (at its first
 * stop where none does).
 */
export const coursesOf = (chain: Chain, turnings: readonly Turning[]): Course[] => {
  const count = chain.legs.length;
  const posts = chain.stops.flatMap((_, n) => (turnings[n] === 'straight' ? [] : [n]));
  if (!isLoop(chain)) {
    return posts.slice(1).flatMap((to, n) => {
      const from = posts[n] ?? 0;
      return courseOf(chain, from, to - from);
    });
  }
  if (posts.length === 0) return courseOf(chain, 0, count);
  return posts.flatMap((from, n) => {
    const to = posts[n + 1] ?? (posts[0] ?? 0) + count;
    return courseOf(chain, from, to - from);
  });
};

/** A leg of a course and where it begins along it, inches; null for a leg of another course. */
export const legOn = (course: Course, id: Leg['id']): { leg: Leg; from: number } | null => {
  const place = course.places.get(id) ?? -1;
  const [leg, from] = [course.legs[place], course.starts[place]];
  return leg === undefined || from === undefined ? null : { leg, from };
};

/** The place of the last leg that begins before a station; the first leg for one before them all. */
const placeOf = ({ starts }: Course, station: number): number => {
  let [low, high] = [0, starts.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((starts[middle] ?? 0) < station) low = middle;
    else high = middle - 1;
  }
  return low;
};

/** The point of the ground at a station along a course, inches; held to the course's ends. */
export const pointAt = (course: Course, station: number): SitePoint => {
  const place = placeOf(course, station);
  const [leg, from] = [course.legs[place], course.starts[place]];
  if (leg === undefined || from === undefined) return course.to.at;
  const share = Math.min(1, Math.max(0, (station - from) / leg.length));
  return leg.bow === 0 ? lerp(leg.start, leg.end, share) : trackAt(leg, share * leg.length);
};

/** The direction in which a course runs at a station, inches from its start. */
export const wayAt = (course: Course, station: number): Radians => {
  const place = placeOf(course, station);
  const [leg, from] = [course.legs[place], course.starts[place]];
  if (leg === undefined || from === undefined) return radians(0);
  return leg.bow === 0 ? leg.bearing : trackBearing(leg, station - from);
};
