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
    expect(list.refused.map(({ line, reason }) => ({ line, reason }))).toEqual([
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

  it('[I41] takes hours of tasks and how long rock takes, and names what is no such row by its line', () => {
    const list = taken(
      [
        'Item,Unit,Price,Currency',
        'hours hole,hours each,0.75,',
        'Hours Rail,Hours per 100 ft,1.25,whatever',
        'hours fabric,hours per 100 m,10,',
        'rock,times,3,',
        'hours hol,hours each,1,',
        'hours leaf,hours per 100 ft,1,',
        'hours brace,each,1,',
        'hours hole,hours each,9,',
        'hours leaf,hours each,"1,5",',
        'hours tear-out,hours per 100 ft,,',
        'rock,times,0.5,',
        'fabric 48in,hours each,2,',
        'tie-rail,pack,8.40,USD',
      ].join('\n'),
    );
    // a hundred feet are 30.48 m
    expect([...list.hours]).toEqual([
      ['hole', 0.75],
      ['rail', 1.25],
      ['fabric', 3.048],
    ]);
    expect(list.rock).toBe(3);
    expect(list.currency).toBe('USD');
    expect([...list.prices.keys()]).toEqual(['tie-rail']);
    expect(list.refused.map(({ line, reason }) => [line, reason])).toEqual([
      [
        6,
        expect.stringMatching(/^Item: expected one of hours tear-out, .*, rock, found “hours hol”/),
      ],
      [7, 'Unit: expected hours each of hours leaf, found “hours per 100 ft”'],
      [8, 'Unit: expected hours each of hours brace, found “each”'],
      [9, 'Item: “hours hole” has a number already: the first counts'],
      [10, 'Price: expected a point before the decimals, as in 0.5; found “1,5”'],
      [11, 'Price: expected a number from 0 to 1000 such as 1.5, found nothing'],
      [12, 'Price: expected a number from 1 to 100 such as 1.5, found “0.5”'],
      [13, expect.stringMatching(/^Item: expected one of hours tear-out/)],
    ]);
  });

  it('[I42] an hour, margin and tax count in their own unit alone, and a row says what it bears on', () => {
    const list = taken(
      [
        'Item,Unit,Price',
        'Margin,percent,20',
        'tax,each,8',
        'hour,percent,60',
        'tie-rail,box,8.40',
        'bolt,pack',
        'hours hole,each,1',
      ].join('\n'),
    );
    expect([...list.prices.keys()]).toEqual(['margin']);
    expect(list.refused).toEqual([
      { line: 3, reason: 'Unit: expected percent of tax, found “each”', bearsOn: 'every job' },
      { line: 4, reason: 'Unit: expected hour of hour, found “percent”', bearsOn: 'every job' },
      { line: 5, reason: expect.stringMatching(/^Unit: expected one of/), bearsOn: 'one item' },
      { line: 6, reason: 'expected 3 cells as in the header, found 2', bearsOn: 'every job' },
      {
        line: 7,
        reason: expect.stringMatching(/^Unit: expected hours each/),
        bearsOn: 'every job',
      },
    ]);
  });
});
