import { formatMoney, type Money } from '../units/money.ts';

/** A result as plain data, its amounts of money as they are written: they are exact, and JSON has no number for that. */
export const moneyWritten = (result: unknown): unknown =>
  JSON.parse(
    JSON.stringify(result, (_, value: unknown) =>
      typeof value === 'bigint' ? formatMoney(value as Money) : value,
    ),
  );
