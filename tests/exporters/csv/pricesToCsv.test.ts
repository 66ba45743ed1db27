import { describe, expect, it } from 'vitest';
import { pricesToCsv } from '../../../src/exporters/csv/pricesToCsv.ts';
import { pricesFromCsv } from '../../../src/importers/csv/pricesFromCsv.ts';
import { labourTasks, rockTimes } from '../../../src/trade/labour.ts';
import { loadLines } from '../../engine/load/loadLines.ts';
import { bare, fence } from '../../engine/plainYard.ts';

const lines = loadLines(
  fence(bare, [
    [0, 0],
    [648, 0],
  ]),
);

describe('a price list to be filled in', () => {
  it('[X40] has every item once, with a unit that fits, and is read back when prices stand in it', () => {
    const csv = pricesToCsv(lines);
    const filled = csv.replaceAll(',,,,', ',1.50,USD,,');
    const list = pricesFromCsv(filled);
    if (!list.ok) throw new Error(list.reason);
    expect(list.value.refused).toEqual([]);
    const codes = new Set(lines.map(({ code }) => code));
    expect(new Set(list.value.prices.keys())).toEqual(new Set([...codes, 'hour', 'margin', 'tax']));
    expect(list.value.prices.get('tie-rail')?.unit).toBe('pack');
    expect(list.value.prices.get('tension-band 2.375')?.unit).toBe('each');
    // with no price in it nothing is taken for free
    const empty = pricesFromCsv(csv);
    expect(empty.ok && empty.value.prices.size).toBe(0);
  });

  it('[X41] has the hours of every task as they are taken, which read back as that', () => {
    const list = pricesFromCsv(pricesToCsv(lines));
    if (!list.ok) throw new Error(list.reason);
    expect([...list.value.hours]).toEqual(labourTasks.map(({ id, hours }) => [id, hours]));
    expect(list.value.rock).toBe(rockTimes);
  });
});
