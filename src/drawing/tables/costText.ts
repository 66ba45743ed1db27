import type { Amount } from '../../engine/compare/amount.ts';
import { formatMoney, noMoney } from '../../units/money.ts';

const withoutText = ({ without: { length } }: Amount): string =>
  length === 0 ? '' : ` without ${length} ${length === 1 ? 'item' : 'items'}`;

const differenceText = ({ amount, without }: Amount): string => {
  if (amount === null || amount === noMoney) return '';
  const sign = amount > noMoney ? '+' : '';
  return ` (${sign}${formatMoney(amount)}${without.length === 0 ? '' : ' as far as priced'})`;
};

/**
 * An amount in words: how many items it is without for want of a price, and how much more it is than the
 * first. An amount that is null is a percentage that the price list has not.
 */
export const costText = (cost: Amount | null, more: Amount | null): string => {
  if (cost === null) return 'none in the list';
  if (cost.amount === null) return 'no price';
  const difference = more === null ? '' : differenceText(more);
  return `${formatMoney(cost.amount)}${withoutText(cost)}${difference}`;
};
