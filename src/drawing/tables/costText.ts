import type { Amount } from '../../engine/compare/amount.ts';
import { formatMoney, noMoney } from '../../units/money.ts';
import { phrase } from '../../phrases/phrase.ts';

const withoutText = ({ without: { length } }: Amount): string => {
  if (length === 0) return '';
  return length === 1 ? phrase` without 1 item` : phrase` without ${length} items`;
};

const differenceText = ({ amount, without }: Amount): string => {
  if (amount === null || amount === noMoney) return '';
  const sign = amount > noMoney ? '+' : '';
  return ` (${sign}${formatMoney(amount)}${without.length === 0 ? '' : phrase` as far as priced`})`;
};

/**
 * An amount in words: how many items it is without for want of a price, and how much more it is than the
 * first. An amount that is null is a percentage that the price list has not.
 */
export const costText = (cost: Amount | null, more: Amount | null): string => {
  if (cost === null) return phrase`none in the list`;
  if (cost.amount === null) return phrase`no price`;
  const difference = more === null ? '' : differenceText(more);
  return `${formatMoney(cost.amount)}${withoutText(cost)}${difference}`;
};
