import { lessMoney } from '../../units/money.ts';
import { inches } from '../../units/inches.ts';
import type { Amount } from './amount.ts';
import type { Compared, Figures } from './compared.ts';
import type { Costs } from './costs.ts';

/** What a yard has more than another, below zero for less. */
export interface Difference extends Figures {
  /** Null without a price list. */
  readonly costs: Costs | null;
}

/** One amount less another. There is none where either is not there; it is without what either is without. */
const lessAmount = (a: Amount, b: Amount): Amount => ({
  amount: a.amount === null || b.amount === null ? null : lessMoney(a.amount, b.amount),
  without: [...new Set([...a.without, ...b.without])],
});

const lessShare = (a: Amount | null, b: Amount | null): Amount | null =>
  a === null || b === null ? null : lessAmount(a, b);

const lessCosts = (a: Costs, b: Costs): Costs => ({
  materials: lessAmount(a.materials, b.materials),
  labour: lessAmount(a.labour, b.labour),
  margin: lessShare(a.margin, b.margin),
  tax: lessShare(a.tax, b.tax),
  total: lessAmount(a.total, b.total),
});

/** What a yard has more than `from`, figure by figure. */
export const differenceOf = (one: Compared, from: Compared): Difference => ({
  posts: one.posts - from.posts,
  holes: one.holes - from.holes,
  fence: inches(one.fence - from.fence),
  stops: one.stops - from.stops,
  settles: one.settles - from.settles,
  costs: one.costs === null || from.costs === null ? null : lessCosts(one.costs, from.costs),
});
