import { describe, expect, it } from 'vitest';
import { pricesFromCsv } from '../../../src/importers/csv/pricesFromCsv.ts';
import { formatMoney } from '../../../src/units/money.ts';

const taken = (text: string) => {
  const found = pricesFromCsv(text);
  if (!found.ok) throw new Error(found.reason);
  return found.value;
};

describe('price lists', () => {
  it('[I40] takes what it can and names every row that it cannot by its line', () => {
    const list = taken(
      [
        'Item,Unit,Price,Currency,Number',
        'tie-rail,pack,8.40,USD,',
        'tie-post,pack,"8,40",USD,',
        'tie-rail,pack,9.00,USD,',
        'bolt,pack,-2,USD,',
        'hog-ring,box,7,USD,',
        'tension-wire,pack,,USD,',
        ',pack,1,USD,',
        'rail 1.66x0.14,pack,31.5,EUR,',
        'gravel,cu ft,2',
        'hour,hour,65,,A-1',
      ].join('\n'),
    );
    expect([...list.prices.keys()]).toEqual(['tie-rail', 'hour']);
    expect(list.currency).toBe('USD');
    expect(formatMoney(list.prices.get('tie-rail')!.price)).toBe('8.40');
    expect(list.prices.get('hour')?.number).toBe('A-1');
    expect(list.refused).toEqual([
      { line: 3, reason: 'Price: expected a point before the decimals, as in 12.50; found “8,40”' },
      { line: 4, reason: 'Item: “tie-rail” has a price already: the first counts' },
      { line: 5, reason: 'Price: expected 0 or more, found “-2”' },
      { line: 6, reason: expect.stringMatching(/^Unit: expected one of each, pack, .*“box”/) },
      { line: 7, reason: 'Price: expected a price, found nothing' },
      { line: 8, reason: 'Item: expected the code of an item, found nothing' },
      { line: 9, reason: 'Currency: expected USD as in the rows before, found “EUR”' },
      { line: 10, reason: 'expected 5 cells as in the header, found 3' },
    ]);
  });

  it('[I40] a text without the columns is refused in one line', () => {
    expect(pricesFromCsv('a,b\n1,2')).toMatchObject({
      ok: false,
      reason: expect.stringMatching(
        /^line 1: expected a header with the columns Item, Unit, Price/,
      ),
    });
  });
});
