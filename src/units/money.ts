/** An amount of money, exact: whole millionths of its currency's unit. */
export type Money = bigint & { readonly [unit]: 'money' };

declare const unit: unique symbol;

const millionths = 1_000_000;
const whole = 1_000_000n;

/** Calls whole millionths an amount of money. The only cast to `Money`. */
export const money = (value: bigint): Money => value as Money;

export const noMoney = money(0n);

/** Division that rounds half away from zero. */
const divided = (value: bigint, by: bigint): bigint => {
  const twice = 2n * (value < 0n ? -value : value) + by;
  const share = twice / (2n * by);
  return value < 0n ? -share : share;
};

export const addMoney = (a: Money, b: Money): Money => money(a + b);

/** The first amount less the second; below zero where that is more. */
export const lessMoney = (a: Money, b: Money): Money => money(a - b);

/**
 * A price times a quantity (to the millionth), rounded half away from zero to the millionth of the
 * currency's unit. RangeError for a quantity that is no finite number.
 */
export const timesMoney = (price: Money, quantity: number): Money => {
  if (!Number.isFinite(quantity)) throw new RangeError(`quantity ${quantity}: expected a number`);
  return money(divided(price * BigInt(Math.round(quantity * millionths)), whole));
};

/** An amount to the cent, half away from zero: what adds up on paper. */
export const toCents = (amount: Money): Money => money(divided(amount, 10_000n) * 10_000n);

/** Two decimals and groups of three, such as `1,234.50`; a minus before it. */
export const formatMoney = (amount: Money): string => {
  const cents = divided(amount, 10_000n);
  const size = cents < 0n ? -cents : cents;
  const units = String(size / 100n).replace(/\B(?=(?:\d{3})+$)/g, ',');
  return `${cents < 0n ? '-' : ''}${units}.${String(size % 100n).padStart(2, '0')}`;
};
