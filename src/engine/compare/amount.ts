import type { Money } from '../../units/money.ts';

/** An amount of money and what is not in it for want of a price. */
export interface Amount {
  /** Null where nothing of it has a price. */
  readonly amount: Money | null;
  /** The codes of what is not in it; none for an amount that is whole. */
  readonly without: readonly string[];
}
