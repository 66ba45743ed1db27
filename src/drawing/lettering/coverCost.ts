import type { PerWeight } from './weight.ts';

/** How many places down its list a text would rather stand than lie on a line of each weight. */
export type CoverCost = PerWeight;

/** What it costs to lie on so much. */
export const weigh = (covered: PerWeight, cost: CoverCost): number =>
  covered.thin * cost.thin +
  covered.chain * cost.chain +
  covered.solid * cost.solid +
  covered.heavy * cost.heavy +
  covered.leader * cost.leader;

/** A place that costs more than the limit is lost: what else it lies on need not be counted. */
export interface Enough {
  readonly cost: CoverCost;
  readonly limit: number;
}

/** A name had better stand anywhere else than on a thin line, and on no other if that can be. */
export const usualCost: CoverCost = { thin: 12, chain: 300, solid: 300, heavy: 300, leader: 300 };
