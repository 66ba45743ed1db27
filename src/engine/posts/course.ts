import { lerp } from '../../geometry/lerp.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Leg } from '../layout.ts';
import { isLoop, type Chain, type Stop } from './chain.ts';
import type { Turning } from './turnings.ts';

/** The legs between two neighbouring posts that stand at marks, as drawn: a run before its posts. */
export interface Course {
  readonly chain: Chain;
  readonly legs: readonly Leg[];
  readonly from: Stop;
  readonly to: Stop;
  readonly length: Inches;
}

const courseOf = (chain: Chain, first: number, count: number): Course[] => {
  const { legs, stops } = chain;
  const own = Array.from({ length: count }, (_, n) => legs[(first + n) % legs.length]);
  const from = stops[first];
  const to = stops[(first + count) % stops.length];
  const known = own.filter((leg) => leg !== undefined);
  if (from === undefined || to === undefined || known.length === 0) return [];
  const length = inches(known.reduce((total, leg) => total + leg.length, 0));
  return [{ chain, legs: known, from, to, length }];
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

/** Where along a course a leg of it begins, inches; null for a leg of another course. */
export const legStart = (course: Course, id: Leg['id']): Inches | null => {
  let from = 0;
  for (const leg of course.legs) {
    if (leg.id === id) return inches(from);
    from += leg.length;
  }
  return null;
};

/** The point of the ground at a station along a course, inches; held to the course's ends. */
export const pointAt = (course: Course, station: number): SitePoint => {
  let from = 0;
  for (const leg of course.legs) {
    if (station <= from + leg.length) {
      return lerp(leg.start, leg.end, Math.max(0, (station - from) / leg.length));
    }
    from += leg.length;
  }
  return course.to.at;
};
