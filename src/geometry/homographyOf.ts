import { composed } from './composed.ts';
import { cross } from './cross.ts';
import type { Point } from './point.ts';
import { depthAt, type Projective } from './projective.ts';
import { reversed } from './reversed.ts';
import { subtract } from './subtract.ts';
import type { Tie } from './tie.ts';

/** Four points of a plane, no three in a row. */
type Frame = readonly [Point<string>, Point<string>, Point<string>, Point<string>];

/** Four ties of a picture. */
export type FourTies = readonly [Tie, Tie, Tie, Tie];

const area = (a: Point<string>, b: Point<string>, c: Point<string>): number =>
  cross(subtract(b, a), subtract(c, a));

/**
 * The map that takes the first three unit points of the projective plane to three points and the point
 * (1, 1, 1) to a fourth: the three as columns, weighed by the triangles that they make with the fourth
 * (Cramer's rule).
 */
const fromUnits = ([a, b, c, d]: Frame): Projective => {
  const [k, l, m] = [area(d, b, c), area(a, d, c), area(a, b, d)];
  return [
    ...([a.x * k, b.x * l, c.x * m] as const),
    ...([a.y * k, b.y * l, c.y * m] as const),
    ...([k, l, m] as const),
  ];
};

const frame = ([a, b, c, d]: FourTies, side: (tie: Tie) => Point<string>): Frame => [
  side(a),
  side(b),
  side(c),
  side(d),
];

const moving = (x: number, y: number): Projective => [1, 0, x, 0, 1, y, 0, 0, 1];

/**
 * The map from pixels to inches of the ground by which a picture that was taken at an angle shows flat
 * ground: four points fix it (four-point homography: R. Hartley, A. Zisserman, Multiple View Geometry in
 * Computer Vision, 2nd ed. 2004, section 2.3; from memory). The first tie has depth 1. Not finite for
 * ties of which three lie in a row: `tiesFault` tells.
 */
export const homographyOf = (ties: FourTies): Projective => {
  const [first] = ties;
  // about the first tie, so that places far from the origin lose nothing
  const seen = frame(ties, ({ u, v }) => ({ x: u - first.u, y: v - first.v }));
  const shown = frame(ties, ({ x, y }) => ({ x: x - first.x, y: y - first.y }));
  const about = composed(fromUnits(shown), reversed(fromUnits(seen)));
  const whole = composed(moving(first.x, first.y), composed(about, moving(-first.u, -first.v)));
  const depth = depthAt(whole, { x: first.u, y: first.v });
  return whole.map((value) => value / depth) as unknown as Projective;
};
