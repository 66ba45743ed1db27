import { priceUnits, type Price, type PriceList } from '../../site/priceList.ts';
import { parseMoney } from '../../units/parseMoney.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { bookTable, type BookCells, type BookColumns } from '../book/bookTable.ts';

type PriceColumn = 'Item' | 'Unit' | 'Price' | 'Currency' | 'Number';

const columns: BookColumns<PriceColumn> = {
  all: ['Item', 'Unit', 'Price', 'Currency', 'Number'],
  needed: ['Item', 'Unit', 'Price'],
};

/** The prices of a file that could be taken, and one line for each row that could not. */
export interface PricesRead extends PriceList {
  readonly refused: readonly { readonly line: number; readonly reason: string }[];
}

const unitIn = (cell: string): Price['unit'] | null => {
  const bare = cell.trim().toLowerCase();
  return priceUnits.find((unit) => unit === bare) ?? null;
};

const priceIn = (cells: BookCells<PriceColumn>): Parsed<Price & { readonly code: string }> => {
  const code = (cells.Item ?? '').trim().replace(/\s+/g, ' ');
  if (code === '') return unread('Item: expected the code of an item, found nothing');
  const unit = unitIn(cells.Unit ?? '');
  if (unit === null) {
    return unread(
      `Unit: expected one of ${priceUnits.join(', ')}, found ${quotedText(cells.Unit ?? '')}`,
    );
  }
  if ((cells.Price ?? '').trim() === '') return unread('Price: expected a price, found nothing');
  const price = parseMoney(cells.Price ?? '');
  if (!price.ok) return unread(`Price: ${price.reason}`);
  return read({ code, unit, price: price.value, number: (cells.Number ?? '').trim() });
};

/**
 * A price list from comma-separated text, in columns of any order. A row that cannot be read, names an item
 * a second time or another currency is named and left out; the rest is taken. Unread with one line for a
 * text that is no such file.
 */
export const pricesFromCsv = (text: string): Parsed<PricesRead> => {
  const table = bookTable(text, columns);
  if (!table.ok) return table;
  const prices = new Map<string, Price>();
  const refused: { line: number; reason: string }[] = [];
  let currency = '';
  for (const { line, cells } of table.value.rows) {
    const found = cells.ok ? priceIn(cells.value) : cells;
    if (!found.ok) {
      refused.push({ line, reason: found.reason });
      continue;
    }
    const own = (cells.ok ? (cells.value.Currency ?? '') : '').trim();
    const { code, ...price } = found.value;
    if (own !== '' && currency !== '' && own !== currency) {
      const reason = `Currency: expected ${currency} as in the rows before, found ${quotedText(own)}`;
      refused.push({ line, reason });
    } else if (prices.has(code)) {
      refused.push({
        line,
        reason: `Item: ${quotedText(code)} has a price already: the first counts`,
      });
    } else {
      if (own !== '') currency = own;
      prices.set(code, price);
    }
  }
  return read({ currency, prices, refused });
};
