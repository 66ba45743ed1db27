import type { PriceList } from '../../site/priceList.ts';
import type { Money } from '../../units/money.ts';
import {
  customerPrice,
  noPriceList,
  type CustomerPrice,
  type RefusedRows,
} from '../price/customerPrice.ts';
import { pricedLoad } from '../price/pricedLoad.ts';
import type { Candidate } from './candidate.ts';

/** Another way to build a yard, as a customer may choose it. */
export interface OtherWay {
  readonly label: string;
  readonly total: Money;
  /** `open` while a stop flag stands in it. */
  readonly plan: 'final' | 'open';
}

/** What a customer is told of a yard and of other ways to build it, and what is missing before all can be told. */
export interface CustomerPrices {
  readonly price: CustomerPrice;
  /** None unless every way has its total. */
  readonly others: readonly OtherWay[];
  readonly missing: readonly string[];
}

/** What is needed of a candidate. */
type Told = Pick<Candidate, 'label' | 'site' | 'layout' | 'load'>;

const missingOf = (price: CustomerPrice): readonly string[] =>
  price.kind === 'open' ? price.missing : [];

const otherWay = ({ label, layout }: Told, price: CustomerPrice): OtherWay[] => {
  if (price.kind === 'open') return [];
  const isStopped = layout.flags.some(({ level }) => level === 'stop');
  return [{ label, total: price.total, plan: isStopped ? 'open' : 'final' }];
};

/**
 * Prices of a yard as drawn, the first of the candidates, and of the other ways to build it, by a price list;
 * null for none. Where any way lacks a total only the yard as drawn is told: a choice of which a part is
 * missing is none.
 */
export const customerPrices = (
  [first, ...rest]: readonly Told[],
  list: (PriceList & { readonly refused: RefusedRows }) | null,
): CustomerPrices => {
  const priceOf = ({ site, layout, load }: Told): CustomerPrice =>
    list === null ? noPriceList : customerPrice(pricedLoad(site, layout, { load, list }), list);
  const price = first === undefined ? noPriceList : priceOf(first);
  const others = rest.map((one) => ({ one, price: priceOf(one) }));
  const own = missingOf(price);
  const more = others.flatMap(({ one, price: other }) =>
    missingOf(other).flatMap((what) => (own.includes(what) ? [] : [`${what} (${one.label})`])),
  );
  const missing = [...own, ...more];
  return {
    price,
    others:
      missing.length > 0 ? [] : others.flatMap(({ one, price: other }) => otherWay(one, other)),
    missing,
  };
};
