import { expect, it } from 'vitest';
import { shotsFromCsv } from '../../../src/importers/csv/shotsFromCsv.ts';
import type { LengthSystem } from '../../../src/units/lengthStyle.ts';

const from = (text: string, system: LengthSystem = 'feet') => {
  const found = shotsFromCsv(text, { shots: [], system });
  if (!found.ok) throw new Error(found.reason);
  return found.value;
};
const shotsOf = (text: string, system?: LengthSystem) =>
  from(text, system).taken.map(({ shot }) => shot);

it('[I2] reads x, y, z and a name without headings, in feet, or metres on a metric site', () => {
  expect(shotsOf('1,2,-0.5,rim\n3,4,1.25')).toEqual([
    { x: 12, y: 24, z: -6, label: 'rim' },
    { x: 36, y: 48, z: 15, label: '' },
  ]);
  const five = from('7,2,1,3,rim');
  expect(five.taken.map(({ shot }) => shot)).toEqual([{ x: 12, y: 24, z: 36, label: '7 rim' }]);
  expect(five.units).toBe(
    'feet, as this yard is measured, columns without headings taken as name, y (north), x (east), z, remark',
  );
  expect(shotsOf('2.54,5.08,0.0254', 'mm')).toEqual([{ x: 100, y: 200, z: 1, label: '' }]);
});

it('[I2] finds its columns in any order, and a unit that a heading names counts', () => {
  expect(shotsOf('Elevation (m),code,N_ft,E ft,Name\n0.254,9,2,1,A')).toEqual([
    { x: 12, y: 24, z: 10, label: 'A' },
  ]);
  expect(from('x_mm,y_mm,z_mm\n1,2,3').units).toBe('millimetres, as the headings say');
});

it('[I2] tells a bad row by its line and takes the others', () => {
  const { taken, refused } = from('x,y,z\n1,2,3\n1,two,3\n4,5\n99999999,0,0');
  expect(taken.map(({ line }) => line)).toEqual([2]);
  expect(refused).toEqual([
    { line: 3, reason: 'y: expected a number, found “two”' },
    { line: 4, reason: 'z: expected a number, found “”' },
    { line: 5, reason: 'x: expected at most 10 miles from 0, found “99999999”' },
  ]);
});

it('[I2] refuses a file without its columns, and passes by shots that are there', () => {
  const into = { shots: [{ x: 12, y: 24, z: 36 as never, label: '' }], system: 'feet' } as const;
  expect(shotsFromCsv('a,b\n1,2', into)).toMatchObject({
    ok: false,
    reason: expect.stringMatching(/^line 1: expected a column for x or east/) as string,
  });
  expect(shotsFromCsv('', into).ok).toBe(false);
  expect(shotsFromCsv('1,2,3\n1,2,4', into)).toMatchObject({ value: { same: 1 } });
});
