import { describe, expect, it } from 'vitest';
import { flagTable } from '../../../src/drawing/tables/flagTable.ts';
import { loadTable } from '../../../src/drawing/tables/loadTable.ts';
import type { LoadLine } from '../../../src/engine/loadLine.ts';
import { emptySite } from '../../../src/site/emptySite.ts';
import { inches } from '../../../src/units/inches.ts';
import type { LengthSystem } from '../../../src/units/lengthStyle.ts';

const site = emptySite({ specs: {}, hardware: {} });
const line = (more: Partial<LoadLine>): LoadLine => ({
  part: 'posts',
  code: 'line-post 1.9x0.145',
  item: 'Line post',
  count: 5,
  unit: 'each',
  each: inches(89),
  sold: null,
  rule: 'One a post.',
  source: 'company rule',
  of: { posts: [], lines: [], gates: [] },
  ...more,
});
const cells = (more: Partial<LoadLine>, system: LengthSystem = 'feet') => {
  const load = [line(more)];
  const lengths = { system, fraction: 8 } as const;
  return loadTable({ lines: load }, { ...site, lengths }).rows[0]?.slice(0, 3);
};

describe('loadTable', () => {
  it('[D25] writes pieces, lengths and volumes each in their own unit', () => {
    expect(cells({})).toEqual(['Line post', '5', '7\'-5"']);
    expect(cells({ unit: 'length', count: 648, each: null })).toEqual(['Line post', '54\'-0"', '']);
    expect(cells({ unit: 'cubic feet', count: 13.09, each: null })?.[1]).toBe('13.1 cu ft');
    // 13.09 cu ft × 0.0283168 m³ (exact: 0.3048 m to the foot)
    expect(cells({ unit: 'cubic feet', count: 13.09, each: null }, 'mm')?.[1]).toBe('0.37 m³');
  });
});

describe('pieces on a site in hundredths of a foot', () => {
  it('[U10] are written in inches, what adds up along the fence in feet', () => {
    const leaf = { item: 'Gate leaf', count: 2, each: inches(56.875) };
    expect(cells(leaf, 'decimal feet')).toEqual(['Gate leaf', '2', '56 7/8"']);
    expect(cells(leaf, 'm')?.[2]).toBe('1445 mm');
    expect(cells({ unit: 'length', count: 648, each: null }, 'decimal feet')?.[1]).toBe("54.00'");
  });
});

describe('flagTable', () => {
  it('calls flags by the names that the plan shows', () => {
    const at = { x: 0, y: 0 };
    const place = { kind: 'line', id: 'line:1' } as const;
    const flag = { level: 'settle', rule: 'r', place, at, message: 'Measure leaf 2.' } as const;
    expect(flagTable({ acceptances: {} }, { flags: [flag, flag] }).rows).toEqual([
      ['F1', 'settle', 'Measure leaf 2.'],
      ['F2', 'settle', 'Measure leaf 2.'],
    ]);
  });
});
