import type { PriceList } from '../../site/priceList.ts';
import { addMoney, type Money } from '../../units/money.ts';
import type { PricedLoad } from './pricedLoad.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What a customer is told of the price, or what the company has to find before that can be told. */
export type CustomerPrice =
  | {
      readonly kind: 'told';
      readonly currency: string;
      /** Without tax. */
      readonly subtotal: Money;
      /** Null where the price list has no tax. */
      readonly tax: Money | null;
      readonly total: Money;
    }
  | { readonly kind: 'open'; readonly missing: readonly string[] };

/** What is told while there is no price list at all. */
export const noPriceList: CustomerPrice = { kind: 'open', missing: [phrase`a price list`] };

/** Rows of a price list that were not taken, as they bear on a total. */
export type RefusedRows = readonly {
  readonly line: number;
  readonly bearsOn: 'one item' | 'every job';
}[];

/** What stands between a price list and a total: each in words that a company can act on. */
const missingOf = (
  priced: PricedLoad,
  list: PriceList & { readonly refused: RefusedRows },
): readonly string[] => [
  ...(priced.lines.length === 0 ? [phrase`something to price`] : []),
  ...priced.unpriced.map((code) => phrase`a price for ${code}`),
  ...list.refused.flatMap(({ line, bearsOn }) =>
    bearsOn === 'every job' ? [phrase`line ${line} of the price list, which was not taken`] : [],
  ),
  ...(list.currency === '' ? [phrase`the currency of the price list`] : []),
];

/**
 * What a customer is told of a priced load list: subtotal, tax and total, nothing of what these are made up
 * of. Nothing is told where anything has no price, a row of the list that bears on every job was not taken,
 * or the currency is not known: a total without them would be too low.
 */
export const customerPrice = (
  priced: PricedLoad,
  list: PriceList & { readonly refused: RefusedRows },
): CustomerPrice => {
  const missing = missingOf(priced, list);
  if (missing.length > 0) return { kind: 'open', missing };
  const subtotal = addMoney(addMoney(priced.materials, priced.labour), priced.margin);
  const tax = list.prices.has('tax') ? priced.tax : null;
  return { kind: 'told', currency: list.currency, subtotal, tax, total: priced.total };
};
