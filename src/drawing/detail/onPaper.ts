import type { PaperPoint } from '../../geometry/point.ts';
import type { GatePoint } from './alongGate.ts';

/** Where a place of a gate comes to lie on the paper: `y` is up, or away from who looks. */
export type OnPaper = (at: GatePoint) => PaperPoint;

/** Places at a scale, ground inches to one of the paper, from where zero is on the paper. */
export const onPaper =
  (ratio: number): OnPaper =>
  ({ x, y }) => ({ x: x / ratio, y: 0 - y / ratio });
