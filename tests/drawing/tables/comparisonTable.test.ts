import { describe, expect, it } from 'vitest';
import { comparedLoadTable } from '../../../src/drawing/tables/comparedLoadTable.ts';
import { comparisonTable } from '../../../src/drawing/tables/comparisonTable.ts';
import type { Table } from '../../../src/drawing/tables/table.ts';
import { unpricedTexts } from '../../../src/drawing/tables/unpricedTexts.ts';
import { candidatesOf } from '../../../src/engine/compare/candidatesOf.ts';
import { comparisonOf, type Comparison } from '../../../src/engine/compare/comparison.ts';
import { namedSites } from '../../../src/engine/compare/namedSites.ts';
import { pricesFromCsv } from '../../../src/importers/csv/pricesFromCsv.ts';
import { addAlternative } from '../../../src/site/edits/addAlternative.ts';
import { addSpec } from '../../../src/site/edits/addSpec.ts';
import { changeAlternative } from '../../../src/site/edits/changeAlternative.ts';
import { setLengths } from '../../../src/site/edits/setLengths.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, spec } from '../../engine/plainYard.ts';

/** 54 ft, 6 ft high in bays of 10 ft; lower for choice, and lower in bays of 8 ft. */
const run = fence(bare, [
  [0, 0],
  [648, 0],
]);
const low = { ...spec, fabricHeight: inches(48) };
const built = addSpec(addSpec(run, 'spec:low', low), 'spec:close', { ...low, maxBay: inches(96) });
const choices = (['spec:low', 'spec:close'] as const).reduce((site, id, n) => {
  const name = `alternative:${n + 1}` as const;
  return changeAlternative(addAlternative(site, `Way ${n + 1}`), name, {
    instead: { 'spec:six': id },
  });
}, built);

const compared = (site: Site, rows: readonly string[] | null): Comparison => {
  const list = pricesFromCsv(['Item,Unit,Price,Currency', ...(rows ?? [])].join('\n'));
  if (!list.ok) throw new Error(list.reason);
  return comparisonOf(candidatesOf(namedSites(site)), rows === null ? null : list.value);
};

const row = ({ rows }: Table, first: string): readonly string[] =>
  rows.find(([cell]) => cell === first)?.slice(1) ?? [];

describe('yards side by side', () => {
  it('[D95] a column each, with how much more or less than the first', () => {
    const table = comparisonTable(compared(choices, null), choices);
    expect(table.title).toBe('Side by side');
    expect(table.columns.map(({ heading }) => heading)).toEqual([
      'What',
      'As drawn',
      'Way 1',
      'Way 2',
    ]);
    expect(table.rows).toEqual([
      ['Fence, gates included', `54'-0"`, `54'-0"`, `54'-0"`],
      ['Posts', '7', '7', '8 (+1)'],
      ['Holes', '7', '7', '8 (+1)'],
      ['Flags: stop', '0', '0', '0'],
      ['Flags: to settle', '0', '0', '0'],
    ]);
  });

  it('[D96] what is not priced is said in its cell, its difference, and by its code', () => {
    const comparison = compared(choices, ['tension-band 2.375,each,0.85,USD']);
    const table = comparisonTable(comparison, choices);
    expect(table.title).toBe('Side by side, USD');
    // 10 bands, and 6 of the lower fence
    const [drawn, first, second] = row(table, 'Materials');
    expect(drawn).toMatch(/^8\.50 without \d+ items$/);
    expect(first).toMatch(/^5\.10 without \d+ items \(-3\.40 as far as priced\)$/);
    expect(second).toMatch(/^5\.10 without \d+ items \(-3\.40 as far as priced\)$/);
    expect(row(table, 'Labour')).toEqual(['no price', 'no price', 'no price']);
    expect(row(table, 'Margin')).toEqual(Array(3).fill('none in the list'));
    expect(row(table, 'Total')[1]).toMatch(/^5\.10 without \d+ items/);
    const [plan, ...others] = unpricedTexts(comparison);
    expect(plan).toMatch(/^As drawn: no price for .*tension-bar 72in.*hour: nothing of these is/);
    expect(others.map((text) => text.slice(0, 18))).toEqual([
      'Way 1: no price fo',
      'Way 2: no price fo',
    ]);
  });

  it('[D96] what is priced whole says nothing of it', () => {
    const units = { each: 'each', length: 'ft', 'cubic feet': 'cu ft' } as const;
    const lines = compared(choices, null).columns.flatMap(({ load }) => load.lines);
    const rows = new Set(lines.map(({ code, unit }) => `${code},${units[unit]},1.10,USD`));
    const whole = [...rows, 'hour,hour,60,USD', 'margin,percent,20,USD', 'tax,percent,5,USD'];
    const comparison = compared(choices, whole);
    const table = comparisonTable(comparison, choices);
    const texts = JSON.stringify(table.rows);
    expect(texts).not.toMatch(/without|as far|no price|none/);
    expect(row(table, 'Total')[1]).toMatch(/^[\d,]+\.\d\d \(-[\d,]+\.\d\d\)$/);
    expect(unpricedTexts(comparison)).toEqual([]);
  });

  it('[D97] where load lists differ, each with its number', () => {
    const table = comparedLoadTable(compared(choices, null), choices);
    expect(row(table, `Line post, 2, 8'-4" each`)).toEqual(['5', '0 (-5)', '0 (-5)']);
    expect(row(table, `Line post, 2, 5'-10" each`)).toEqual(['0', '5 (+5)', '6 (+6)']);
    expect(row(table, `Fabric, 4'-0" high, 2.000" mesh of 0.148" wire`)).toEqual([
      '0"',
      `54'-0" (+54'-0")`,
      `54'-0" (+54'-0")`,
    ]);
    expect(table.rows.map(([item]) => item)).not.toContain('Tension wire');
    for (const cells of table.rows) expect(cells).toHaveLength(4);
  });

  it('[D95] [D97] in the units of the site', () => {
    const metric = setLengths(choices, { system: 'm' });
    const comparison = compared(metric, null);
    expect(row(comparisonTable(comparison, metric), 'Fence, gates included')[0]).toContain('m');
    expect(row(comparedLoadTable(comparison, metric), 'Concrete')[1]).toMatch(
      /^\d\.\d\d m³ \(-\d\.\d\d m³\)$/,
    );
  });

  it('[D95] one yard alone has its column, and none has nothing', () => {
    const alone = compared(run, null);
    expect(comparisonTable(alone, run).columns).toHaveLength(2);
    expect(comparedLoadTable(alone, run).rows).toEqual([]);
    const none = comparisonOf([], null);
    expect(comparisonTable(none, run).columns).toHaveLength(1);
  });
});
