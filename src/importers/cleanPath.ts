import { sameSpot } from '../geometry/sameSpot.ts';
import type { FoundPath } from '../site/found.ts';
import { read, unread, type Parsed } from '../units/parsed.ts';
import { phrase } from '../phrases/phrase.ts';

/**
 * A path without corners that lie on the spot of their neighbour (1/64 in); one that is closed by its
 * last corner lying on its first is closed. Closed with two corners and no arc it is a line there and
 * back, and open. Unread for one that has no length.
 */
export const cleanPath = (path: FoundPath): Parsed<FoundPath> => {
  const legs = path.points.map((point, n) => ({ point, bow: path.bows[n] ?? 0 }));
  const kept = legs.filter(({ point }, n) => {
    const next = legs[n + 1];
    return next === undefined || !sameSpot(point, next.point);
  });
  const [first, last] = [kept[0], kept.at(-1)];
  const meets =
    first !== undefined &&
    last !== undefined &&
    kept.length > 1 &&
    sameSpot(first.point, last.point);
  const corners = meets ? kept.slice(0, -1) : kept;
  const round =
    (path.closed || meets) && (corners.length > 2 || corners.some(({ bow }) => bow !== 0));
  if (corners.length < 2) return unread(phrase`expected a line of some length, found one spot`);
  return read({
    name: path.name,
    points: corners.map(({ point }) => point),
    bows: corners.map(({ bow }, n) => (round || n < corners.length - 1 ? bow : 0)),
    closed: round,
    ...(path.limits !== undefined && { limits: path.limits }),
  });
};
