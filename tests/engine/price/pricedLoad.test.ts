import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { loadOf } from '../../../src/engine/load/loadOf.ts';
import { pricedLoad } from '../../../src/engine/price/pricedLoad.ts';
import { pricesFromCsv } from '../../../src/importers/csv/pricesFromCsv.ts';
import { setCounting } from '../../../src/site/edits/setCounting.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import type { Site } from '../../../src/site/site.ts';
import { formatMoney } from '../../../src/units/money.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence } from '../plainYard.ts';

/** 54 ft, 4 ft high, two ends: 5 line posts of 70 in, 2 terminals of 74 in. */
const run = changeSpec(
  fence(bare, [
    [0, 0],
    [648, 0],
  ]),
  'spec:six',
  { fabricHeight: inches(48) },
);

const priced = (site: Site, rows: readonly string[]) => {
  const list = pricesFromCsv(['Item,Unit,Price,Currency', ...rows].join('\n'));
  if (!list.ok) throw new Error(list.reason);
  const layout = layOutSite(site);
  return pricedLoad(site, layout, { load: loadOf(site, layout), list: list.value });
};

const totalOf = (found: ReturnType<typeof priced>, code: string): string | null => {
  const total = found.lines.find(({ line }) => line.code === code)?.total ?? null;
  return total === null ? null : formatMoney(total);
};

describe('a priced load list', () => {
  it('[M1] prices things, packs, lengths and volumes each by its own unit', () => {
    const found = priced(run, [
      'tension-band 2.375,each,0.85,USD',
      'tie-rail,pack,8.40,USD',
      'line-post 1.9x0.13,ft,2.10,USD',
      'fabric 48in-2-0.148,pack,96,USD',
      'tension-wire,m,0.20,USD',
      'concrete,cu m,100,USD',
    ]);
    // worked by hand: 6 × 0.85; 1 bag; 5 × 70 ÷ 12 ft = 29.1667 × 2.10; 2 rolls; 16.4592 m × 0.20
    expect(totalOf(found, 'tension-band 2.375')).toBe('5.10');
    expect(totalOf(found, 'tie-rail')).toBe('8.40');
    expect(totalOf(found, 'line-post 1.9x0.13')).toBe('61.25');
    expect(totalOf(found, 'fabric 48in-2-0.148')).toBe('192.00');
    expect(totalOf(found, 'tension-wire')).toBe('3.29');
    expect(Number(totalOf(found, 'concrete'))).toBeGreaterThan(10);
  });

  it('[M2] what has no price, or one for another unit, is named and in no total', () => {
    const found = priced(run, ['tension-band 2.375,each,0.85,USD', 'hog-ring,ft,1,USD']);
    expect(found.unpriced).toContain('hog-ring');
    expect(found.unpriced).toContain('tension-bar 48in');
    expect(found.unpriced).toContain('hour');
    expect(found.unpriced).not.toContain('tension-band 2.375');
    expect(formatMoney(found.total)).toBe('5.10');
    // gravel has a depth, and is for all that no length
    const gravelled = setCounting(run, { gravel: inches(6) });
    expect(priced(gravelled, ['gravel,ft,1,USD']).unpriced).toContain('gravel');
    expect(priced(gravelled, ['gravel,cu ft,1,USD']).unpriced).not.toContain('gravel');
  });

  it('[M3] hours by task, more in rock and without access; margin on cost, tax on all', () => {
    const found = priced(run, ['hour,hour,60,USD', 'margin,percent,25,USD', 'tax,percent,10,USD']);
    const hours = new Map(found.tasks.map(({ task, hours: many }) => [task, many]));
    // seven holes at half an hour; 54 ft at 3 and 1.5 hours for a hundred
    expect(hours.get('Dig, set and concrete a post')).toBeCloseTo(3.5, 9);
    expect(hours.get('Stretch and tie fabric')).toBeCloseTo(1.62, 9);
    expect(hours.get('Put up rail')).toBeCloseTo(0.81, 9);
    // 5.93 hours at 60 are 355.80; a quarter more 444.75; a tenth on that 489.23
    expect(formatMoney(found.labour)).toBe('355.80');
    expect(formatMoney(found.margin)).toBe('88.95');
    expect(formatMoney(found.tax)).toBe('44.48');
    expect(formatMoney(found.total)).toBe('489.23');
    const hard = priced({ ...run, work: { ...run.work, rock: 1, access: 0.5 } }, []);
    const slow = new Map(hard.tasks.map(({ task, hours: many }) => [task, many]));
    expect(slow.get('Dig, set and concrete a post')).toBeCloseTo(3.5 * 4 * 1.5, 9);
  });

  it('[M4] takes the hours that a company lists, ours for the rest, and says whose they are', () => {
    const rows = ['hours hole,hours each,0.75,', 'rock,times,2,', 'hours rail,hours per 100 ft,0,'];
    const hard = { ...run, work: { ...run.work, rock: 0.5 } };
    const tasks = new Map(priced(hard, rows).tasks.map((task) => [task.id, task]));
    // seven holes at three quarters, half of them in rock at twice that
    expect(tasks.get('hole')).toMatchObject({
      rate: { value: 0.75, from: 'price list' },
      rock: { value: 2, from: 'price list' },
    });
    expect(tasks.get('hole')?.hours).toBeCloseTo(7 * 0.75 * 1.5, 9);
    expect(tasks.get('fabric')?.rate).toEqual({ value: 3, from: 'ours' });
    // what takes no time needs no price
    expect(tasks.get('rail')).toMatchObject({ hours: 0, total: 0n });
    const usual = new Map(priced(hard, []).tasks.map((task) => [task.id, task]));
    expect(usual.get('hole')?.rock).toEqual({ value: 4, from: 'ours' });
    expect(priced(run, []).tasks.every(({ rock }) => rock === null)).toBe(true);
  });
});
