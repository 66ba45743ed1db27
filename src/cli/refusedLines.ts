import type { PricesRead } from '../importers/csv/pricesFromCsv.ts';

/** One line for each row of a price list that could not be taken. */
export const refusedLines = (path: string, { refused }: PricesRead): string[] =>
  refused.map(({ line, reason }) => `${path}: line ${line}: ${reason}`);
