import type { PricesRead } from '../importers/csv/pricesFromCsv.ts';
import { phrase } from '../phrases/phrase.ts';

/** One line for each row of a price list that could not be taken. */
export const refusedLines = (path: string, { refused }: PricesRead): string[] =>
  refused.map(({ line, reason }) => phrase`${path}: line ${line}: ${reason}`);
