import type { SitePoint } from '../../geometry/point.ts';
import type { MarkId } from '../../site/ids.ts';
import { frameOf, type Frame } from './frame.ts';
import type { Network } from './networks.ts';
import { reachOf } from './reachOf.ts';
import { rowsOf, type Places, type Row } from './rows.ts';

/** What the sums of a network need all the way. */
export interface Task {
  readonly network: Network;
  readonly frame: Frame;
  readonly reach: number;
}

/** A network with its marks moved from where they were drawn, and what it is off by then. */
export interface Stance {
  /** Inches, by column. */
  readonly moved: Float64Array;
  readonly places: Places;
  readonly rows: readonly Row[];
  /** The sum of squares of what the rows are off by. */
  readonly cost: number;
}

export const taskOf = (network: Network, frame: Frame = frameOf(network)): Task => ({
  network,
  frame,
  reach: reachOf(network),
});

const placesAt = ({ network, frame }: Task, moved: Float64Array): Places =>
  new Map(
    [...network.spots].map(([id, { x, y }]): [MarkId, SitePoint] => {
      const column = frame.columns.get(id);
      if (column === undefined) return [id, { x, y }];
      return [id, { x: x + moved[column]!, y: y + moved[column + 1]! }];
    }),
  );

/** How a network stands when its marks have moved so far. */
export const stanceAt = (task: Task, moved: Float64Array): Stance => {
  const places = placesAt(task, moved);
  const rows = rowsOf(task.network.sightings, task.frame, places);
  const cost = rows.reduce((sum, { off }) => sum + off * off, 0);
  return { moved, places, rows, cost };
};

/** The stance a step further. */
export const stepped = (task: Task, { moved }: Stance, by: Float64Array): Stance =>
  stanceAt(
    task,
    moved.map((move, n) => move + by[n]!),
  );

/** The longest part of a step along x or y, inches. */
export const longestOf = (by: Float64Array): number => {
  let most = 0;
  for (const move of by) most = Math.max(most, Math.abs(move));
  return most;
};
