import { expect, it } from 'vitest';
import { fitTable } from '../../../src/drawing/tables/fitTable.ts';
import type { FitRow } from '../../../src/engine/checks/fitsOf.ts';
import { inches } from '../../../src/units/inches.ts';

const row = (od: number | null, made: readonly [number, number] | null): FitRow => {
  const [low, high] = made === null ? [null, null] : made.map(inches);
  const fits = od === null || made === null ? null : od >= made[0] && od <= made[1];
  return {
    role: 'hinge',
    part: 'hardware:strap',
    label: 'Strap',
    against: 'post',
    on: 'the hinge post',
    od: od === null ? null : inches(od),
    low: low ?? null,
    high: high ?? null,
    fits,
  };
};

it('[D53] tells a part with both outside diameters, and what is to be measured', () => {
  const rows = [
    row(2.375, [2.375, 2.875]),
    row(4, [2.375, 2.375]),
    row(null, [4, 4]),
    row(4, null),
    row(null, null),
  ];
  const table = fitTable(rows, 'Walk gate', { system: 'feet', fraction: 8 });
  expect(table.rows.map((cells) => cells.slice(2))).toEqual([
    ['2.375"', '2.375" to 2.875"', 'fits'],
    ['4.000"', '2.375"', 'does not fit'],
    ['not said', '4.000"', 'not known: measure the post'],
    ['4.000"', 'not said', 'not known: measure the hinge'],
    ['not said', 'not said', 'not known: measure the post and the hinge'],
  ]);
  expect(table.rows[0]?.slice(0, 2)).toEqual(['Hinge: Strap', 'the hinge post']);
  const metric = fitTable(rows, 'Walk gate', { system: 'mm', fraction: 8 });
  expect(metric.rows[1]?.slice(2, 4)).toEqual(['101.6 mm', '60.3 mm']);
});
