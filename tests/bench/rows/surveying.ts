import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { newCarry } from '../../../src/engine/carry/carry.ts';
import { fitted } from '../../../src/engine/survey/fitted.ts';
import { stanceAt, taskOf } from '../../../src/engine/survey/stance.ts';
import { networksOf, sightingsOf, surveyed } from '../../../src/engine/survey/surveyed.ts';
import { surveyOf } from '../../../src/engine/survey/surveyOf.ts';
import type { MarkId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { gridSite } from '../../engine/survey/gridSite.ts';
import { measured } from '../measured.ts';
import type { Figure, Pace, Row } from '../row.ts';

/** The weight of staying as drawn, so that the whole does not float: over square inches. */
const asDrawn = 1e-6;

/** The yard with its first tape read a little otherwise at every step. */
const reread = (site: Site, step: number): Site => {
  const read = site.observations['observation:1'];
  if (read?.kind !== 'tape') throw new Error('expected a tape');
  const length = inches(read.length + (1 + (step % 8)) / 64);
  return { ...site, observations: { ...site.observations, 'observation:1': { ...read, length } } };
};

/** A hand that types: every call is the next reading, with what the survey before leaves. */
const typing = (site: Site) => {
  let stood = surveyed(site, null);
  let { pieces } = newCarry();
  let step = 0;
  return () => {
    step += 1;
    stood = surveyed(reread(site, step), stood);
    const carry = newCarry(pieces);
    const survey = surveyOf(stood.site, carry);
    pieces = carry.pieces;
    return { site: stood.site, survey };
  };
};

/** Steps of Gauss and Newton that the network of a site takes from its sketch. */
const stepsOf = (site: Site): number => {
  const [network] = networksOf(site);
  if (network === undefined) throw new Error('expected a network');
  const task = taskOf(network);
  return fitted(task, stanceAt(task, new Float64Array(task.frame.size))).steps;
};

/** One tape as the dense solver has it: the columns of its ends, what was read, and how far that is trusted. */
type Tape = readonly [from: number, to: number, length: number, sigma: number];

/** Adds a tape to the normal equations: a row of four columns, so that none of it is multiplied by nothing. */
const addTape = (
  { normal, right }: { readonly normal: Matrix; readonly right: Matrix },
  [from, to, length, sigma]: Tape,
  places: Float64Array,
): void => {
  const [dx, dy] = [places[to]! - places[from]!, places[to + 1]! - places[from + 1]!];
  const long = Math.hypot(dx, dy);
  const columns = [from, from + 1, to, to + 1];
  const values = [-dx, -dy, dx, dy].map((value) => value / long / sigma);
  columns.forEach((row, n) => {
    right.set(row, 0, right.get(row, 0) + (values[n]! * (length - long)) / sigma);
    columns.forEach((column, m) => {
      normal.set(row, column, normal.get(row, column) + values[n]! * values[m]!);
    });
  });
};

/** So many steps from the sketch: normal equations of all tapes, dense, and Cholesky's solution of each by the library. */
const denselySolved = (site: Site, steps: number) => {
  const ids = Object.keys(site.marks) as MarkId[];
  const column = new Map(ids.map((id, n) => [id, 2 * n] as const));
  const drawn = Float64Array.from(
    ids.flatMap((id) => [site.marks[id]?.x ?? 0, site.marks[id]?.y ?? 0]),
  );
  const tapes = sightingsOf(site).flatMap(({ seen, sigma }): Tape[] => {
    if (seen.kind !== 'tape') return [];
    return [[column.get(seen.from) ?? 0, column.get(seen.to) ?? 0, seen.length, sigma]];
  });
  let places = drawn;
  for (let step = 0; step < steps; step += 1) {
    const normal = Matrix.eye(places.length).mul(asDrawn);
    const right = Matrix.columnVector(places.map((place, n) => asDrawn * (drawn[n]! - place)));
    for (const tape of tapes) addTape({ normal, right }, tape, places);
    const by = new CholeskyDecomposition(normal).solve(right).to1DArray();
    places = places.map((place, n) => place + by[n]!);
  }
  return new Map(ids.map((id, n) => [id, { x: places[2 * n]!, y: places[2 * n + 1]! }] as const));
};

const run = ({ quick }: Pace): Figure => {
  const site = gridSite({ marks: 200, tapes: 600 });
  const steps = stepsOf(reread(site, 1));
  const dense = denselySolved(reread(site, 1), steps);
  const { marks } = typing(site)().site;
  const apart = [...dense].reduce((most, [id, { x, y }]) => {
    const mark = marks[id] ?? { x: Number.NaN, y: Number.NaN };
    return Math.max(most, Math.hypot(mark.x - x, mark.y - y));
  }, 0);
  let step = 0;
  const dully = () => {
    step += 1;
    return denselySolved(reread(site, step), steps);
  };
  return measured(typing(site), dully, {
    rounds: quick ? 2 : 12,
    note: `${steps} steps of both; marks at most ${apart.toExponential(0)} in apart; ours also says what each tape is worth and what helps`,
  });
};

/** A survey of which one tape is read again: where all marks stand, and what is said of them. */
export const surveying: Row = {
  work: 'survey of 200 marks and 600 tapes, one changed reading',
  against: 'ml-matrix: dense normal equations, Cholesky',
  bar: 0.2,
  run: (pace) => Promise.resolve(run(pace)),
};
