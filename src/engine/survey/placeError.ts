import type { SitePoint } from '../../geometry/point.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Inches } from '../../units/inches.ts';
import { shadowsOf, type Datum } from './datum.ts';
import { ellipseOf, type Covariance } from './ellipse.ts';
import type { Held } from './held.ts';
import { product } from './strength.ts';

/** A place that follows from two marks, such as the middle of an opening from the ends of its leg. */
export interface Place {
  readonly marks: readonly [MarkId, MarkId];
  /** Where the marks are, site inches. */
  readonly at: readonly [SitePoint, SitePoint];
  readonly of: (a: SitePoint, b: SitePoint) => SitePoint;
}

/** How a place goes along with a mark: where it goes when that moves an inch east, and an inch north. */
interface Lever {
  readonly east: SitePoint;
  readonly north: SitePoint;
}

/** Inches to either side over which is differenced. */
const reach = 0.01;

const leverOf = (look: (x: number, y: number) => SitePoint): Lever => {
  const by = (x: number, y: number): SitePoint => {
    const [up, down] = [look(x * reach, y * reach), look(-x * reach, -y * reach)];
    return { x: (up.x - down.x) / (2 * reach), y: (up.y - down.y) / (2 * reach) };
  };
  return { east: by(1, 0), north: by(0, 1) };
};

const leversOf = ({ at: [a, b], of }: Place): readonly [Lever, Lever] => [
  leverOf((x, y) => of({ x: a.x + x, y: a.y + y }, b)),
  leverOf((x, y) => of(a, { x: b.x + x, y: b.y + y })),
];

/** The covariance of a place, by those of its two marks and how it goes along with them. */
const covarianceAt = (datum: Datum, place: Place): Covariance => {
  const [first, second] = place.marks;
  const share = (mark: MarkId, other: MarkId) =>
    shadowsOf(datum, [
      { mark, share: 1 },
      { mark: other, share: 0 },
    ]);
  const [levers, a, b] = [leversOf(place), share(first, second), share(second, first)];
  return a.reduce(
    (sum, [, ax, ay], part) => {
      const moves = [levers[0].east, levers[0].north, levers[1].east, levers[1].north];
      const shadows = [ax, ay, b[part]![1], b[part]![2]];
      const along = (of: (move: SitePoint) => number): Float64Array =>
        ax.map((_, n) => moves.reduce((all, move, k) => all + of(move) * shadows[k]![n]!, 0));
      const [x, y] = [along((move) => move.x), along((move) => move.y)];
      return {
        xx: sum.xx + product(x, x),
        xy: sum.xy + product(x, y),
        yy: sum.yy + product(y, y),
      };
    },
    { xx: 0, xy: 0, yy: 0 },
  );
};

/**
 * How far off a place that follows from two marks may be by the tapes, told from the body that is held:
 * the longer half axis of its standard error ellipse, inches. Where the body is fast to fixed marks that
 * is absolute; one that can move as a whole is told from its own marks, which shift and turn by nothing
 * on the whole. Null where one of the marks is loose, or nothing holds. As if no reading were wrong.
 */
export const placeError = ({ datum, loose }: Held, place: Place): Inches | null => {
  const held = (id: MarkId): boolean =>
    datum?.body.marks.has(id) === true && loose.every(({ mark }) => mark !== id);
  if (datum === null || !place.marks.every(held)) return null;
  return ellipseOf(covarianceAt(datum, place)).major;
};
