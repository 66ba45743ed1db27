import { weights, type PerWeight } from './weight.ts';

/** How many places down its list a text would rather stand than lie on a line of each weight. */
export type CoverCost = PerWeight;

/** What it costs to lie on so much. */
export const weigh = (covered: PerWeight, cost: CoverCost): number =>
  weights.reduce((sum, weight) => sum + covered[weight] * cost[weight], 0);

/** A name had better stand anywhere else than on a thin line, and on no other if that can be. */
export const usualCost: CoverCost = { thin: 12, chain: 300, solid: 300, heavy: 300, leader: 300 };
