import { describe, expect, it } from 'vitest';
import { customerPrice } from '../../../src/engine/price/customerPrice.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { loadOf } from '../../../src/engine/load/loadOf.ts';
import { pricedLoad } from '../../../src/engine/price/pricedLoad.ts';
import { pricesToCsv } from '../../../src/exporters/csv/pricesToCsv.ts';
import { pricesFromCsv } from '../../../src/importers/csv/pricesFromCsv.ts';
import { formatMoney } from '../../../src/units/money.ts';
import { bare, fence } from '../plainYard.ts';

const run = fence(bare, [
  [0, 0],
  [648, 0],
]);
const layout = layOutSite(run);
const load = loadOf(run, layout);

/** The list to fill in with 2 in every row that needs a price, changed by hand. */
const priced = (change: (text: string) => string, site = run) => {
  const text = pricesToCsv(load.lines).replaceAll(',,,,', ',2,USD,,');
  const list = pricesFromCsv(change(text));
  if (!list.ok) throw new Error(list.reason);
  const own = site === run ? load : { lines: [], tickets: [] };
  return customerPrice(
    pricedLoad(site, layOutSite(site), { load: own, list: list.value }),
    list.value,
  );
};

const missing = (change: (text: string) => string, site = run): readonly string[] => {
  const price = priced(change, site);
  return price.kind === 'open' ? price.missing : [];
};

describe('the price that a customer is told', () => {
  it('[M5] is subtotal, tax and total, which add up', () => {
    const price = priced((text) => text.replace('tax,percent,2', 'tax,percent,10'));
    if (price.kind !== 'told' || price.tax === null) throw new Error('expected a price with tax');
    expect(price.subtotal + price.tax).toBe(price.total);
    expect(Number(price.tax)).toBeCloseTo(Number(price.subtotal) / 10, -4);
    expect(price.currency).toBe('USD');
    const untaxed = priced((text) => text.replace(/tax,percent.*\r\n/, ''));
    expect(untaxed).toMatchObject({ kind: 'told', tax: null });
    if (untaxed.kind !== 'told') throw new Error('expected a price');
    expect(formatMoney(untaxed.total)).toBe(formatMoney(untaxed.subtotal));
  });

  it.each([
    [/tie-rail,.*\r\n/, 'tie-rail,pack,,USD,,\r\n', 'a price for tie-rail'],
    [/hour,hour.*\r\n/, '', 'a price for hour'],
    [/margin,percent,2/, 'margin,percent,', 'which was not taken'],
    [/tax,percent,2/, 'tax,each,2', 'which was not taken'],
    [/hours hole,hours each,[\d.]+/, 'hours hole,hours each,soon', 'which was not taken'],
    [/USD/g, '', 'the currency of the price list'],
  ])(
    '[M5] with %s as %j there is no amount, and it is told what is missing',
    (found, other, what) => {
      const told = missing((text) => text.replace(found, other));
      expect(told).toEqual([expect.stringContaining(what)]);
    },
  );

  it('[M5] what has no price and is not on the load list is not missed, and nothing has no price', () => {
    expect(missing((text) => `${text}gold,each,dear,USD,,\r\n`)).toEqual([]);
    expect(missing((text) => text, bare)).toEqual(['something to price']);
  });
});
