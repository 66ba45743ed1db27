import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import type { MarkId, ObservationId } from '../../../src/site/ids.ts';
import { marksObserved } from '../../../src/site/marksObserved.ts';
import type { Observation } from '../../../src/site/observation.ts';
import type { Site } from '../../../src/site/site.ts';
import { plainOff, type PlaceOf } from './plainObserved.ts';

/** What was observed, with its sigma, and the unknowns that it has to do with. */
interface Equation {
  readonly id: ObservationId;
  readonly seen: Observation;
  readonly sigma: number;
  readonly unknowns: readonly number[];
}

/** A site as plain numbers: two unknowns for each mark that can move, and its equations. */
export interface Plain {
  readonly free: readonly MarkId[];
  readonly drawn: Float64Array;
  readonly equations: readonly Equation[];
  /** Where marks are for a vector of unknowns, as it is when they are asked for. */
  readonly placesOf: (x: Float64Array) => PlaceOf;
}

/** One standard deviation of an observation, as the document's doc comments have it. */
const sigmaOf = (seen: Observation, { trusts }: Site): number => {
  if (seen.kind === 'fix') return Infinity;
  if (seen.trust !== null) return seen.trust;
  if (seen.kind === 'tape') return trusts.tapeLeast + trusts.tapeShare * seen.length;
  return seen.kind === 'parallel' ? trusts.straight : trusts[seen.kind];
};

/**
 * The plain numbers of a site; what satellites found is left out, since it only says where to look for
 * what all else leaves free, and marks of which nothing else was observed.
 */
export const plainly = (site: Site): Plain => {
  const entries = Object.entries(site.observations) as [ObservationId, Observation][];
  const firm = entries.filter(([, { kind }]) => kind !== 'fix');
  const seen = firm.map(([, one]) => one);
  const touched = [...new Set(seen.flatMap((one) => Object.values(marksObserved(one))))];
  const free = touched.filter((id) => site.marks[id]?.fixed === false);
  const numbers = new Map(free.map((id, n) => [id, n] as const));
  const placesOf =
    (x: Float64Array): PlaceOf =>
    (id) => {
      const n = numbers.get(id);
      return n === undefined ? site.marks[id]! : { x: x[2 * n]!, y: x[2 * n + 1]! };
    };
  const equations = firm.map(([id, one]): Equation => {
    const own = [...new Set(Object.values(marksObserved(one)))].flatMap(
      (mark) => numbers.get(mark) ?? [],
    );
    return {
      id,
      seen: one,
      sigma: sigmaOf(one, site),
      unknowns: own.flatMap((n) => [2 * n, 2 * n + 1]),
    };
  });
  const drawn = Float64Array.from(free.flatMap((id) => [site.marks[id]!.x, site.marks[id]!.y]));
  return { free, drawn, equations, placesOf };
};

/** What all observations are off by over their sigmas. */
export const offs = ({ equations, placesOf }: Plain, x: Float64Array): number[] => {
  const at = placesOf(x);
  return equations.flatMap(({ seen, sigma }) => plainOff(seen, at).map((off) => off / sigma));
};

const squares = (values: ArrayLike<number>): number =>
  Array.from(values).reduce((sum, value) => sum + value * value, 0);

/** The sum of squares of what all observations are off by. */
export const costAt = (plain: Plain, x: Float64Array): number => squares(offs(plain, x));

/** Inches over which is differenced: by five places to the fourth order, and by four for the second. */
const [near, far] = [0.1, 0.5];

/** A vector that can be pushed at one place while something is looked at, and is as before then. */
const pusher = (x: Float64Array) => {
  const at = Float64Array.from(x);
  return {
    at,
    pushed: <T>(n: number, by: number, look: () => T): T => {
      const before = at[n]!;
      at[n] = before + by;
      const seen = look();
      at[n] = before;
      return seen;
    },
  };
};

/** The rows of the observation equations, by differences. */
export const rowsAt = (plain: Plain, x: Float64Array): Float64Array[] => {
  const { at, pushed } = pusher(x);
  const places = plain.placesOf(at);
  return plain.equations.flatMap(({ seen, sigma, unknowns }) => {
    const look = (): readonly number[] => plainOff(seen, places);
    const rows = look().map(() => new Float64Array(x.length));
    for (const n of unknowns) {
      const [a, b, c, d] = [-2, -1, 1, 2].map((steps) => pushed(n, steps * near, look));
      rows.forEach((row, k) => {
        row[n] = (a![k]! - 8 * b![k]! + 8 * c![k]! - d![k]!) / (12 * near * sigma);
      });
    }
    return rows;
  });
};

/** The second derivatives of half the sum of squares that the rows alone do not have, by differences. */
const bendAt = (plain: Plain, x: Float64Array): Float64Array[] => {
  const bend = Array.from(x, () => new Float64Array(x.length));
  const { at, pushed } = pusher(x);
  const places = plain.placesOf(at);
  for (const { seen, sigma, unknowns } of plain.equations) {
    const base = plainOff(seen, places);
    const look = (n: number, by: number, m: number, also: number): readonly number[] =>
      pushed(n, by, () => pushed(m, also, () => plainOff(seen, places)));
    for (const n of unknowns) {
      for (const m of unknowns) {
        if (m < n) continue;
        const [pp, pm] = [look(n, far, m, far), look(n, far, m, -far)];
        const [mp, mm] = [look(n, -far, m, far), look(n, -far, m, -far)];
        base.forEach((one, k) => {
          const by = (one * (pp[k]! - pm[k]! - mp[k]! + mm[k]!)) / (4 * far * far * sigma ** 2);
          bend[n]![m]! += by;
          if (m !== n) bend[m]![n]! += by;
        });
      }
    }
  }
  return bend;
};

/** The sum of rows, each times its share. */
const summed = (rows: readonly Float64Array[], shares: readonly number[], size: number) => {
  const sum = new Float64Array(size);
  rows.forEach((row, k) => row.forEach((value, n) => (sum[n]! += value * shares[k]!)));
  return sum;
};

/** How a sketch pulls: by the weight of a move from it, over square inches. */
type Pull = readonly [drawn: Float64Array, weight: number];

/** Half the slope downhill of the sum of squares, and half its second derivatives with what bends added. */
const slopeAt = (
  plain: Plain,
  x: Float64Array,
  { bend, pull: [drawn, weight] }: { readonly bend: readonly Float64Array[]; readonly pull: Pull },
) => {
  const rows = rowsAt(plain, x);
  const matrix = bend.map((row, n) => row.with(n, row[n]! + weight));
  for (const row of rows) {
    row.forEach((a, n) => {
      if (a !== 0) row.forEach((b, m) => (matrix[n]![m]! += a * b));
    });
  }
  const down = summed(rows, offs(plain, x), x.length).map(
    (slope, n) => (drawn[n]! - x[n]!) * weight - slope,
  );
  return { rows, down, matrix };
};

/** What solves a matrix with `hold` added to its diagonal, by a library; null where it is not definite. */
const solverOf = (matrix: readonly Float64Array[], hold: number) => {
  const held = matrix.map((row, n) => row.with(n, row[n]! + hold));
  const factor = new CholeskyDecomposition(new Matrix(held));
  if (!factor.isPositiveDefinite()) return null;
  return (right: Float64Array): Float64Array =>
    Float64Array.from(factor.solve(Matrix.columnVector(right)).to1DArray());
};

const along = (x: Float64Array, by: Float64Array, share: number): Float64Array =>
  x.map((value, n) => value + share * by[n]!);

const longestOf = (by: Float64Array): number => Math.max(0, ...by.map(Math.abs));

/** How all that is off turns away from the straight along a step, to the second order, by differences. */
const turnOn = (plain: Plain, x: Float64Array, by: Float64Array): number[] => {
  const share = 0.05;
  const [back, now, there] = [-share, 0, share].map((part) => offs(plain, along(x, by, part)));
  return now!.map((one, k) => (there![k]! - 2 * one + back![k]!) / share ** 2);
};

/** A step, with half the turn of the valley that it follows where that is no longer than a few steps. */
const bentStep = (
  plain: Plain,
  x: Float64Array,
  solve: (right: Float64Array) => Float64Array,
  { rows, down }: Pick<ReturnType<typeof slopeAt>, 'rows' | 'down'>,
) => {
  const straight = solve(down);
  const longest = longestOf(straight);
  if (longest < 0.01) return { by: straight, longest };
  const turn = solve(summed(rows, turnOn(plain, x, straight), x.length));
  const by = longestOf(turn) < 8 * longest ? along(straight, turn, -0.5) : straight;
  return { by, longest };
};

const mostSteps = 200;

/**
 * Downhill with derivatives by differences and a library for the sums: steps by the rows alone, after
 * twenty by full second derivatives (Newton), held shorter while they do not lower the sum. The sketch
 * pulls with a standard deviation of so many inches.
 */
const descended = (plain: Plain, start: Float64Array, sketch: number): Float64Array => {
  const weight = sketch ** -2;
  const total = (x: Float64Array): number =>
    costAt(plain, x) + weight * squares(along(x, plain.drawn, -1));
  let [x, cost, hold, before] = [start, total(start), 0, Infinity];
  for (let steps = 0; steps < mostSteps; steps += 1) {
    const flat = (): Float64Array[] => Array.from(x, () => new Float64Array(x.length));
    const bend = steps < 20 ? flat() : bendAt(plain, x);
    const slope = slopeAt(plain, x, { bend, pull: [plain.drawn, weight] });
    let moved = false;
    while (!moved && hold < 1e6) {
      const solve = solverOf(slope.matrix, hold);
      if (solve !== null) {
        const { by, longest } = bentStep(plain, x, solve, slope);
        const next = along(x, by, 1);
        const nextCost = total(next);
        // differences are rounded: what the sketch alone holds comes no nearer than that
        if (longest < 1e-6 || (longest < 1e-3 && longest >= before)) return x;
        moved = nextCost < cost || (longest < 0.01 && nextCost < cost * (1 + 1e-12));
        if (moved) [x, cost, before] = [next, nextCost, longest];
      }
      hold = moved ? (hold < 1e-9 ? 0 : hold / 5) : Math.max(1e-9, hold * 4);
    }
    if (!moved) return x;
  }
  return x;
};

/**
 * Least squares from a start, the sketch where none is told: first with a sketch that pulls a little,
 * so that what nothing holds does not run away, then with one that does not pull. Shares no code with
 * the engine.
 */
export const plainSolve = (plain: Plain, start: Float64Array = plain.drawn): Float64Array =>
  descended(plain, descended(plain, start, 2e4), 1e6);
