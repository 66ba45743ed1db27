import type { SitePoint } from '../../geometry/point.ts';
import { leastSquares } from '../../geometry/upperTriangle.ts';
import type { Part } from './bodies.ts';
import { candidatesAmong, pulled, type Candidate, type Field } from './candidate.ts';
import { covarianceOf, shadowsOf } from './datum.ts';
import { majorAxis, spreads } from './ellipse.ts';
import type { Held } from './held.ts';
import { rowsOf, type Places } from './rows.ts';
import { product, shadowOf } from './strength.ts';
import { redundanciesIn } from './tested.ts';

/** A reading of which the others show less than this is not checked. Ours, no published source. */
export const checkedFrom = 0.05;

/** A tape that gains less than this share helps nothing. Ours, no published source. */
const leastGain = 0.01;

/** Something that ought to be known better: a combination of a part's unknowns as R⁻ᵀ has it. */
interface Weak {
  readonly part: Part;
  readonly shadow: Float64Array;
}

/** The places that are known worst, the worst first, each along its longer axis. */
const weakPlaces = ({ datum, loose }: Held): Weak[] =>
  datum === null
    ? []
    : loose
        .filter(({ mark }) => datum.body.marks.has(mark))
        .map(({ mark }) => ({ mark, covariance: covarianceOf(datum, [{ mark, share: 1 }]) }))
        .toSorted((a, b) => spreads(b.covariance)[0] - spreads(a.covariance)[0])
        .flatMap(({ mark, covariance }) => {
          const axis = majorAxis(covariance);
          return shadowsOf(datum, [{ mark, share: 1 }]).map(([part, x, y]) => ({
            part,
            shadow: x.map((value, n) => axis.x * value + axis.y * y[n]!),
          }));
        });

/** The readings that are not checked, the least checked first. */
const weakReadings = ({ parts }: Held): Weak[] =>
  parts
    .flatMap((part) =>
      [...redundanciesIn(part.strength)].map(([row, redundancy]) => ({ part, row, redundancy })),
    )
    .filter(({ redundancy }) => redundancy < checkedFrom)
    .toSorted((a, b) => a.redundancy - b.redundancy)
    .map(({ part, row }) => ({ part, shadow: shadowOf(row, part.strength) }));

/** What a tape is off by on its own in parts other than one: its far end may stand in another. */
const elsewhere = (parts: readonly Part[], not: Part, one: Candidate, places: Places) =>
  parts.reduce((sum, part) => {
    if (part === not) return sum;
    const [row] = rowsOf([pulled(one)], part.strength.frame, places);
    if (row === undefined || row.columns.length === 0) return sum;
    const own = shadowOf(row, part.strength);
    return sum + product(own, own);
  }, 0);

const none: SitePoint = { x: 0, y: 0 };

/**
 * The most that a tape can take off the variance of a combination: the square of how far that reaches along the
 * tape, which is the product of the two by covariance, over the sigma of the tape.
 */
const mostOf = ({ part, shadow }: Weak, { marks }: Field) => {
  const { frame, triangle } = part.strength;
  const all = leastSquares(triangle, shadow);
  const reach = marks.map(([id]): SitePoint => {
    const column = frame.columns.get(id);
    return column === undefined ? none : { x: all[column]!, y: all[column + 1]! };
  });
  return (from: number, to: number, length: number, sigma: number): number => {
    const [a, here] = [marks[from]![1], reach[from]!];
    const [b, there] = [marks[to]![1], reach[to]!];
    const stretch = (there.x - here.x) * (b.x - a.x) + (there.y - here.y) * (b.y - a.y);
    return (stretch / (length * sigma)) ** 2;
  };
};

/**
 * The tape that takes the most off the variance of what is weak, by what one more row does to it: with
 * s and t the two as R⁻ᵀ has them, (s·t)² / (1 + t·t). The product is had without t, and is the most
 * that a tape can do, so that few have to be looked at.
 */
const bestFor = (weak: Weak, parts: readonly Part[], field: Field, places: Places) => {
  const { part, shadow } = weak;
  const least = leastGain * product(shadow, shadow);
  const tried = candidatesAmong(field, mostOf(weak, field), least).toSorted(
    (a, b) => b.worth - a.worth || a.length - b.length,
  );
  let [best, gain]: [Candidate | null, number] = [null, least];
  for (const one of tried) {
    if (one.worth <= gain) break;
    const [row] = rowsOf([pulled(one)], part.strength.frame, places);
    if (row === undefined) continue;
    const own = shadowOf(row, part.strength);
    const gained = one.worth / (1 + product(own, own) + elsewhere(parts, part, one, places));
    if (gained > gain) [best, gain] = [one, gained];
  }
  return best;
};

/**
 * The tape that helps most where all marks hang together: for the mark that is known worst, where some
 * are not known well enough; else for the reading that the others check least. Null where none is so,
 * or no tape would help it.
 */
export const checkingTape = (held: Held, places: Places, field: Field): Candidate | null => {
  for (const weak of [...weakPlaces(held), ...weakReadings(held)]) {
    const best = bestFor(weak, held.parts, field, places);
    if (best !== null) return best;
  }
  return null;
};
