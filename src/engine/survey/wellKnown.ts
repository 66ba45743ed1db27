import { selectedInverse } from '../../geometry/selectedInverse.ts';
import { leastSquares, whitened } from '../../geometry/upperTriangle.ts';
import type { MarkId } from '../../site/ids.ts';
import type { Part } from './bodies.ts';
import type { Datum } from './datum.ts';
import { spreads, type Covariance } from './ellipse.ts';
import { product } from './strength.ts';

/** Half of what is asked for is well. Ours. */
const well = 0.5;

/** Where unknowns are so much worse than what is asked for, rounding may tell what it is not. Ours. */
const poor = 1e3;

/** The covariance of two unknowns beside what the datum's marks do on the whole, by that of the two by themselves. */
const besideWhole = (part: Part, datum: Datum) => {
  const { triangle } = part.strength;
  const whole = (datum.whole.get(part) ?? []).map(({ all, inDatum }) => {
    const shadow = whitened(triangle, inDatum);
    return { all, shadow, along: leastSquares(triangle, shadow) };
  });
  const squares = whole.map((one) => whole.map((other) => product(one.shadow, other.shadow)));
  return (covariance: number, a: number, b: number): number => {
    let left = covariance;
    for (const [n, { all, along }] of whole.entries()) {
      left -= all[a]! * along[b]! + along[a]! * all[b]!;
      for (const [m, other] of whole.entries()) left += all[a]! * squares[n]![m]! * other.all[b]!;
    }
    return left;
  };
};

const wellKnownIn = (part: Part, datum: Datum, within: number): [MarkId, Covariance][] => {
  const { frame, triangle } = part.strength;
  const { starts } = frame.fill;
  const inverse = selectedInverse(triangle);
  for (let column = 0; column < frame.size; column += 1) {
    if (inverse[starts[column]!]! > (poor * within) ** 2) return [];
  }
  const beside = besideWhole(part, datum);
  return [...frame.columns].flatMap(([mark, x]): [MarkId, Covariance][] => {
    if (!datum.by.has(mark)) return [];
    const covariance = {
      xx: beside(inverse[starts[x]!]!, x, x),
      xy: beside(inverse[starts[x]! + 1]!, x, x + 1),
      yy: beside(inverse[starts[x + 1]!]!, x + 1, x + 1),
    };
    return spreads(covariance)[0] <= (well * within) ** 2 ? [[mark, covariance]] : [];
  });
};

/**
 * The marks of a datum that are known well within so many inches, each with its covariance, as `covarianceOf` tells it but
 * for rounding; all at once. Of a part with an unknown that is known very badly by itself none is told.
 */
export const wellKnown = (datum: Datum, within: number): ReadonlyMap<MarkId, Covariance> =>
  new Map(datum.parts.flatMap((part) => wellKnownIn(part, datum, within)));
