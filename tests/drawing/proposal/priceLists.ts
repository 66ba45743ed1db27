import * as fc from 'fast-check';
import type { Layout } from '../../../src/engine/layout.ts';
import { loadOf } from '../../../src/engine/load/loadOf.ts';
import { customerPrice } from '../../../src/engine/price/customerPrice.ts';
import { pricedLoad } from '../../../src/engine/price/pricedLoad.ts';
import { pricesToCsv } from '../../../src/exporters/csv/pricesToCsv.ts';
import { pricesFromCsv, type PricesRead } from '../../../src/importers/csv/pricesFromCsv.ts';
import type { Site } from '../../../src/site/site.ts';

/** The list to fill in of a site with a price in every row of it that needs one. */
export const filledList = (
  site: Site,
  layout: Layout,
  priceOf: (item: string, n: number) => string,
): PricesRead => {
  const rows = pricesToCsv(loadOf(site, layout).lines).split('\r\n');
  const filled = rows.map((row, n) =>
    row.replace(/^("[^"]*(?:""[^"]*)*"|[^,]*),([^,]*),,,,/, (_, item: string, unit: string) =>
      [item, unit, priceOf(item, n), 'USD', '', ''].join(','),
    ),
  );
  const list = pricesFromCsv(filled.join('\n'));
  if (!list.ok) throw new Error(list.reason);
  if (list.value.refused.length > 0) throw new Error(JSON.stringify(list.value.refused));
  return list.value;
};

/** A site priced by a list, and what of that a customer is told. */
export const pricedBy = (site: Site, layout: Layout, list: PricesRead) => {
  const priced = pricedLoad(site, layout, { load: loadOf(site, layout), list });
  return { priced, price: customerPrice(priced, list) };
};

/** Prices of rows by their number, whole cents, no two of the first hundred alike by design. */
export const anyPrices = fc
  .array(fc.integer({ min: 1, max: 99_999 }), { minLength: 100, maxLength: 100 })
  .map((cents) => (item: string, n: number): string => {
    const own = cents[n % cents.length] ?? 1;
    if (item === 'margin' || item === 'tax') return String((own % 60) + 1);
    return (own / 100).toFixed(2);
  });
