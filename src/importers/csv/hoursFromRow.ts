import { hourRows, type HourRow } from '../../exporters/csv/hourRows.ts';
import { parseDecimal } from '../../units/parseDecimal.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What a row of a price list says of the work: hours by its task, or times as long in rock. */
export interface HoursRead {
  readonly row: HourRow;
  /** In the first unit of its row. */
  readonly value: number;
}

const bareText = (text: string): string => text.trim().replace(/\s+/g, ' ').toLowerCase();

const unitNames = new Set(hourRows.flatMap(({ units }) => units.map(({ name }) => name)));

/** True of a row that means to tell of the work, whether or not it does so rightly. */
const isOfWork = (item: string, unit: string): boolean =>
  /^hours\b/.test(item) || item === 'rock' || unitNames.has(unit);

/**
 * What a row of a price list says of the work; null for a row of another sort. Unread with one line for one
 * that names no task, another unit, or no number.
 */
export const hoursFromRow = (cells: {
  readonly item: string;
  readonly unit: string;
  readonly price: string;
}): Parsed<HoursRead> | null => {
  const [item, unit] = [bareText(cells.item), bareText(cells.unit)];
  if (!isOfWork(item, unit)) return null;
  const row = hourRows.find(({ item: own }) => own === item);
  if (row === undefined) {
    const all = hourRows.map(({ item: own }) => own).join(', ');
    return unread(phrase`Item: expected one of ${all}, found ${quotedText(cells.item)}`);
  }
  const found = row.units.find(({ name }) => name === unit);
  if (found === undefined) {
    const names = row.units.map(({ name }) => name).join(phrase` or `);
    return unread(phrase`Unit: expected ${names} of ${row.item}, found ${quotedText(cells.unit)}`);
  }
  const number = parseDecimal(cells.price, row.limits);
  if (!number.ok) return unread(phrase`Price: ${number.reason}`);
  return read({ row, value: number.value * found.times });
};
