import { priceUnits, type Price, type PriceList } from '../../site/priceList.ts';
import { parseMoney } from '../../units/parseMoney.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { bookTable, type BookCells, type BookColumns } from '../book/bookTable.ts';
import { labelText } from '../labelText.ts';
import { hoursFromRow, type HoursRead } from './hoursFromRow.ts';
import { phrase } from '../../phrases/phrase.ts';

type PriceColumn = 'Item' | 'Unit' | 'Price' | 'Currency' | 'Number';

const columns: BookColumns<PriceColumn> = {
  all: ['Item', 'Unit', 'Price', 'Currency', 'Number'],
  needed: ['Item', 'Unit', 'Price'],
};

/** The prices of a file that could be taken, and one line for each row that could not. */
export interface PricesRead extends PriceList {
  readonly refused: readonly {
    readonly line: number;
    readonly reason: string;
    /** Whether it would have been the price of one item, or may have changed what every job comes to. */
    readonly bearsOn: 'one item' | 'every job';
  }[];
}

/** What a good row says. */
type Row =
  | { readonly says: 'price'; readonly code: string; readonly price: Price }
  | ({ readonly says: 'hours' } & HoursRead);

const unitIn = (cell: string): Price['unit'] | null => {
  const bare = cell.trim().toLowerCase();
  return priceUnits.find((unit) => unit === bare) ?? null;
};

/** Codes that are of every job, each in the one unit in which it means anything. */
const ownUnits: Readonly<Record<string, Price['unit']>> = {
  hour: 'hour',
  margin: 'percent',
  tax: 'percent',
};

/** The code of a row; the codes of every job are known however they are capitalised. */
const codeIn = (cells: BookCells<PriceColumn>): string => {
  const code = (cells.Item ?? '').trim().replace(/\s+/g, ' ');
  const low = code.toLowerCase();
  return Object.hasOwn(ownUnits, low) ? low : code;
};

const priceIn = (cells: BookCells<PriceColumn>): Parsed<Row> => {
  const code = codeIn(cells);
  if (code === '') return unread(phrase`Item: expected the code of an item, found nothing`);
  const unit = unitIn(cells.Unit ?? '');
  const due = Object.hasOwn(ownUnits, code) ? ownUnits[code] : undefined;
  if (unit === null || (due !== undefined && unit !== due)) {
    const expected =
      due === undefined ? phrase`one of ${priceUnits.join(', ')}` : phrase`${due} of ${code}`;
    return unread(phrase`Unit: expected ${expected}, found ${quotedText(cells.Unit ?? '')}`);
  }
  if ((cells.Price ?? '').trim() === '')
    return unread(phrase`Price: expected a price, found nothing`);
  const price = parseMoney(cells.Price ?? '');
  if (!price.ok) return unread(phrase`Price: ${price.reason}`);
  const number = (cells.Number ?? '').trim();
  return read({ says: 'price', code, price: { unit, price: price.value, number } });
};

const rowIn = (cells: BookCells<PriceColumn>): Parsed<Row> => {
  const { Item: item = '', Unit: unit = '', Price: price = '' } = cells;
  const hours = hoursFromRow({ item, unit, price });
  if (hours === null) return priceIn(cells);
  return hours.ok ? read({ says: 'hours', ...hours.value }) : hours;
};

/** A row that cannot be told apart may be any; margin, tax and hours are in every total. */
const bearing = (cells: Parsed<BookCells<PriceColumn>>): 'one item' | 'every job' => {
  if (!cells.ok) return 'every job';
  const { Item: item = '', Unit: unit = '', Price: price = '' } = cells.value;
  const isOwn = Object.hasOwn(ownUnits, codeIn(cells.value));
  return isOwn || hoursFromRow({ item, unit, price }) !== null ? 'every job' : 'one item';
};

/** The longest name of a currency that is told apart. */
const longestCurrency = 40;

const currencyIn = (cells: Parsed<BookCells<PriceColumn>>): string =>
  cells.ok ? labelText(cells.value.Currency ?? '').slice(0, longestCurrency) : '';

/** What has been taken so far. */
interface Taken {
  currency: string;
  readonly prices: Map<string, Price>;
  readonly hours: Map<string, number>;
  rock: number | null;
}

/** Takes hours over, once for each task; the line that says why not. */
const takeHours = (taken: Taken, { row, value }: HoursRead): string | null => {
  const { task, item } = row;
  const isThere = task === null ? taken.rock !== null : taken.hours.has(task);
  if (isThere) return phrase`Item: ${quotedText(item)} has a number already: the first counts`;
  if (task === null) taken.rock = value;
  else taken.hours.set(task, value);
  return null;
};

/** Takes a price over, once for each item and all in one currency; the line that says why not. */
const takePrice = (
  taken: Taken,
  { code, price }: Extract<Row, { says: 'price' }>,
  own: string,
): string | null => {
  const { currency, prices } = taken;
  if (own !== '' && currency !== '' && own !== currency) {
    return phrase`Currency: expected ${currency} as in the rows before, found ${quotedText(own)}`;
  }
  if (prices.has(code)) {
    return phrase`Item: ${quotedText(code)} has a price already: the first counts`;
  }
  if (own !== '') taken.currency = own;
  prices.set(code, price);
  return null;
};

/**
 * A price list from comma-separated text, in columns of any order. A row that cannot be read, names an item
 * a second time or another currency is named and left out; the rest is taken. Rows of hours have a number in
 * place of a price, and no currency. Unread with one line for a text that is no such file.
 */
export const pricesFromCsv = (text: string): Parsed<PricesRead> => {
  const table = bookTable(text, columns);
  if (!table.ok) return table;
  const taken: Taken = { currency: '', prices: new Map(), hours: new Map(), rock: null };
  const refused: PricesRead['refused'][number][] = [];
  const faultOf = (cells: Parsed<BookCells<PriceColumn>>): string | null => {
    const found = cells.ok ? rowIn(cells.value) : cells;
    if (!found.ok) return found.reason;
    if (found.value.says === 'hours') return takeHours(taken, found.value);
    return takePrice(taken, found.value, currencyIn(cells));
  };
  for (const { line, cells } of table.value.rows) {
    const reason = faultOf(cells);
    if (reason !== null) refused.push({ line, reason, bearsOn: bearing(cells) });
  }
  return read({ ...taken, refused });
};
