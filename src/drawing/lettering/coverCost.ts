import type { Covered } from './lettering.ts';

/** How many places down its list a text would rather stand than lie on a line or on a wall. */
export interface CoverCost {
  readonly thin: number;
  readonly heavy: number;
}

/** What it costs to lie on so much. */
export const weigh = ({ thin, heavy }: Covered, cost: CoverCost): number =>
  thin * cost.thin + heavy * cost.heavy;

/** A name had better stand anywhere else than on a line, and still more than on a wall. */
export const usualCost: CoverCost = { thin: 12, heavy: 24 };
