import type { PriceList } from '../../site/priceList.ts';
import type { Money } from '../../units/money.ts';
import type { PricedLoad } from '../price/pricedLoad.ts';
import type { Amount } from './amount.ts';

/** What a yard comes to by a price list, each amount with what is not in it. */
export interface Costs {
  readonly materials: Amount;
  readonly labour: Amount;
  /** Null where the list has no percentage for it. */
  readonly margin: Amount | null;
  readonly tax: Amount | null;
  readonly total: Amount;
}

const none: readonly string[] = [];

const amountOf = (
  amount: Money,
  parts: readonly (Money | null)[],
  without: readonly string[],
): Amount => ({
  amount: parts.length > 0 && parts.every((part) => part === null) ? null : amount,
  without,
});

/**
 * What a priced load list comes to. An amount of which nothing has a price is none, and not zero; what is
 * only in part priced names what is not in it, and so do margin, tax and total that follow from it.
 */
export const costsOf = (priced: PricedLoad, { prices }: Pick<PriceList, 'prices'>): Costs => {
  const lines = priced.lines.map(({ total }) => total);
  const tasks = priced.tasks.map(({ total }) => total);
  const codes = priced.lines.flatMap(({ line, total }) => (total === null ? [line.code] : []));
  const share = (code: 'margin' | 'tax'): Amount | null =>
    prices.get(code)?.unit === 'percent'
      ? amountOf(priced[code], [...lines, ...tasks], priced.unpriced)
      : null;
  return {
    materials: amountOf(priced.materials, lines, [...new Set(codes)]),
    labour: amountOf(priced.labour, tasks, tasks.includes(null) ? ['hour'] : none),
    margin: share('margin'),
    tax: share('tax'),
    total: amountOf(priced.total, [...lines, ...tasks], priced.unpriced),
  };
};
