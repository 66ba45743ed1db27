import { firstStep, fitted, type Fit } from './fitted.ts';
import { isAngle } from './figureText.ts';
import { frameOf, type Frame } from './frame.ts';
import { nearest } from './nearest.ts';
import type { Network } from './networks.ts';
import { otherSides } from './otherSides.ts';
import type { Places } from './rows.ts';
import { stepsWorth } from './stepsWorth.ts';
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

/** From the other side a fit that agrees is reached in so many steps or not at all. Ours. */
const fewSteps = 30;

/** A reading that is off by more standard deviations may be so since the start was a bad one. */
const doubtful = 3.29;

/** Whether all is read as it was drawn. */
const readAsDrawn = ({ reach }: Task, { rows }: Stance): boolean =>
  rows.every(({ off, sighting: { sigma, seen } }) => {
    return Math.abs(off) * sigma <= (isAngle(seen.kind) ? asDrawn / reach : asDrawn);
  });

/** Moves that take marks apart, each another way; of the marks that are asked for, the others stay. */
const takenApart = ({ network, frame, reach }: Task, which: (key: string) => boolean) => {
  const moved = new Float64Array(frame.size);
  [...network.spots].forEach(([id, { x, y }], n) => {
    const column = frame.columns.get(id);
    if (column === undefined || !which(`${x} ${y}`)) return;
    moved[column] = apart * reach * Math.cos(n * goldenTurn);
    moved[column + 1] = apart * reach * Math.sin(n * goldenTurn);
  });
  return moved;
};

/** The start: as drawn, but marks on one spot a little apart, since no tape says which way they go. */
const startOf = (task: Task, drawn: Stance): Stance => {
  const met = new Map<string, number>();
  for (const { x, y } of task.network.spots.values()) {
    met.set(`${x} ${y}`, (met.get(`${x} ${y}`) ?? 0) + 1);
  }
  if (met.size === task.network.spots.size) return drawn;
  return stanceAt(
    task,
    takenApart(task, (key) => (met.get(key) ?? 0) > 1),
  );
};

const agrees = ({ stance }: Fit): boolean =>
  stance.rows.every(({ off }) => Math.abs(off) < doubtful);

/** How far from where they were drawn the marks of a network are that stand elsewhere. */
const movesTo = ({ network, frame }: Task, { spots }: Network): Float64Array => {
  const moved = new Float64Array(frame.size);
  for (const [id, { x, y }] of network.spots) {
    const [column, to] = [frame.columns.get(id), spots.get(id)];
    if (column === undefined || to === undefined) continue;
    [moved[column], moved[column + 1]] = [to.x - x, to.y - y];
  }
  return moved;
};

/** So many of the readings that are off most have marks of theirs tried on the other side. Ours. */
const mostCrossed = 3;

/**
 * A fit in which every reading agrees, from marks on the other side of a line that they are taped to:
 * a rough sketch may have one there, and small steps do not bring it across. Null where there is none, and
 * for a network so large that nobody waits for such tries.
 */
const crossedOver = (task: Task, { stance }: Fit): Fit | null => {
  const spots = new Map(
    [...task.network.spots].map(([id, at]) => [id, { ...at, ...stance.places.get(id) }] as const),
  );
  const worst = stance.rows
    .filter(({ off }) => Math.abs(off) >= doubtful)
    .toSorted((a, b) => Math.abs(b.off) - Math.abs(a.off))
    .slice(0, Math.min(mostCrossed, stepsWorth(task.network) / (2 * fewSteps)));
  for (const { sighting } of worst) {
    for (const start of otherSides({ ...task.network, spots }, sighting)) {
      const fit = fitted(task, stanceAt(task, movesTo(task, start)), { steps: fewSteps });
      if (fit.converged && agrees(fit)) return fit;
    }
  }
  return null;
};

/**
 * The best fit from the sketch. Marks drawn in one row cannot leave it, since every tape runs along
 * it: where readings are far off they start once more a little apart, and then from the other side.
 */
const bestFit = (task: Task, first: Fit): Fit => {
  if (agrees(first)) return first;
  const apartFit = fitted(
    task,
    stanceAt(
      task,
      takenApart(task, () => true),
    ),
  );
  const best = apartFit.stance.cost < first.stance.cost / 2 ? apartFit : first;
  return agrees(best) ? best : (crossedOver(task, best) ?? best);
};

/**
 * The places of the marks of a network that fit what was observed best: weighted least squares by
 * Gauss and Newton, damped as Levenberg and Marquardt do. Of places that fit as well the nearest to
 * where the marks were drawn, so that there always is an answer; what satellites found says no more
 * than that a mark is drawn the better. What fits as drawn stays so to the last bit. Never throws; says
 * where the sums came to no end.
 */
export const adjusted = (network: Network, frame: Frame = frameOf(network)): Adjusted => {
  const firm = network.sightings.filter(({ seen }) => seen.kind !== 'fix');
  const fixes = network.sightings.filter(({ seen }) => seen.kind === 'fix');
  const task = taskOf({ ...network, sightings: firm }, frame);
  const drawn = stanceAt(task, new Float64Array(task.frame.size));
  const asItIs = { places: drawn.places, converged: true };
  if (readAsDrawn(task, drawn)) return asItIs;
  const step = firstStep(task, drawn);
  if (longestOf(step.by) <= asDrawn) return asItIs;
  const start = startOf(task, drawn);
  const first = start === drawn ? fitted(task, drawn, { first: step }) : fitted(task, start);
  const { stance, converged } = bestFit(task, first);
  return { places: (converged ? nearest(task, stance, fixes) : stance).places, converged };
};
