import { leastSquares } from '../../geometry/upperTriangle.ts';
import { fitted } from './fitted.ts';
import { isAngle } from './figureText.ts';
import { nearest } from './nearest.ts';
import type { Network } from './networks.ts';
import { triangleOf, type Places } from './rows.ts';
import { longestOf, stanceAt, taskOf, type Stance, type Task } from './stance.ts';

/** Where the marks of a network stand, and whether the sums came to an end. */
export interface Adjusted {
  readonly places: Places;
  readonly converged: boolean;
}

/** What is off by no more inches is as drawn, and stays there to the last bit. */
const asDrawn = 1e-7;

/** Marks that start apart do so by this share of how far the network reaches. */
const apart = 1e-3;

/** A golden turn: so many steps of it point every way evenly. */
const goldenTurn = Math.PI * (3 - Math.sqrt(5));

/** A reading that is off by more standard deviations may be so since the start was a bad one. */
const doubtful = 3.29;

const fitsAsDrawn = ({ frame, reach }: Task, { rows }: Stance): boolean => {
  const close = rows.every(({ off, sighting: { sigma, seen } }) => {
    return Math.abs(off) * sigma <= (isAngle(seen.kind) ? asDrawn / reach : asDrawn);
  });
  if (close) return true;
  return longestOf(leastSquares(triangleOf(rows, frame, reach ** -2))) <= asDrawn;
};

/** Moves that take marks apart, each another way; of the marks that are asked for, the others stay. */
const takenApart = ({ network, frame, reach }: Task, which: (key: string) => boolean) => {
  const moved = new Float64Array(frame.later.length);
  [...network.spots].forEach(([id, { x, y }], n) => {
    const column = frame.columns.get(id);
    if (column === undefined || !which(`${x} ${y}`)) return;
    moved[column] = apart * reach * Math.cos(n * goldenTurn);
    moved[column + 1] = apart * reach * Math.sin(n * goldenTurn);
  });
  return moved;
};

/** The start: as drawn, but marks on one spot a little apart, since no tape says which way they go. */
const startOf = (task: Task): Stance => {
  const met = new Map<string, number>();
  for (const { x, y } of task.network.spots.values()) {
    met.set(`${x} ${y}`, (met.get(`${x} ${y}`) ?? 0) + 1);
  }
  return stanceAt(
    task,
    takenApart(task, (key) => (met.get(key) ?? 0) > 1),
  );
};

/**
 * The best fit from the sketch. Marks drawn in one row cannot leave it, since every tape runs along
 * it: where readings are far off they start once more a little apart.
 */
const bestFit = (task: Task) => {
  const first = fitted(task, startOf(task));
  if (first.stance.rows.every(({ off }) => Math.abs(off) < doubtful)) return first;
  const other = fitted(
    task,
    stanceAt(
      task,
      takenApart(task, () => true),
    ),
  );
  return other.stance.cost < first.stance.cost / 2 ? other : first;
};

/**
 * The places of the marks of a network that fit what was observed best: weighted least squares by
 * Gauss and Newton, damped as Levenberg and Marquardt do. Of places that fit as well the nearest to
 * where the marks were drawn, so that there always is an answer; what satellites found says no more
 * than that a mark is drawn the better. What fits as drawn stays so to the last bit. Never throws; says
 * where the sums came to no end.
 */
export const adjusted = (network: Network): Adjusted => {
  const firm = network.sightings.filter(({ seen }) => seen.kind !== 'fix');
  const fixes = network.sightings.filter(({ seen }) => seen.kind === 'fix');
  const task = taskOf({ ...network, sightings: firm });
  const drawn = stanceAt(task, new Float64Array(task.frame.later.length));
  if (fitsAsDrawn(task, drawn)) return { places: drawn.places, converged: true };
  const { stance, converged } = bestFit(task);
  return { places: (converged ? nearest(task, stance, fixes) : stance).places, converged };
};
