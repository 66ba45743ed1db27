import { pricesFromCsv, type PricesRead } from '../importers/csv/pricesFromCsv.ts';
import { unread, type Parsed } from '../units/parsed.ts';
import type { Io } from './io.ts';

/** The price list that a path names; a refusal names the path, then what is wrong in the file. */
export const readPrices = async (io: Io, path: string): Promise<Parsed<PricesRead>> => {
  const text = await io.readText(path);
  if (!text.ok) return text;
  const list = pricesFromCsv(text.value);
  return list.ok ? list : unread(`${path}: ${list.reason}`);
};
