import type { Money } from '../units/money.ts';

/** What a price is for: one counted thing, a pack as it is sold, a length, a volume, an hour or a percentage. */
export const priceUnits = ['each', 'pack', 'ft', 'm', 'cu ft', 'cu m', 'hour', 'percent'] as const;
export type PriceUnit = (typeof priceUnits)[number];

/** One price by the code of its item; `number` is the supplier's. */
export interface Price {
  readonly unit: PriceUnit;
  readonly price: Money;
  readonly number: string;
}

/**
 * A company's prices, all in one currency: a book of its own, no part of a document. `hour`, `tax` and `margin`
 * are codes of their own.
 */
export interface PriceList {
  readonly currency: string;
  readonly prices: ReadonlyMap<string, Price>;
  /** The company's own hours by the ids of tasks, each or for every hundred feet as the task is counted. */
  readonly hours: ReadonlyMap<string, number>;
  /** How many times as long a hole in rock takes; null where the company does not say. */
  readonly rock: number | null;
}
