import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fileText } from '../../src/importers/fileText.ts';
import { readFound } from '../../src/importers/readFound.ts';
import { dxfText, line } from './dxf/dxfText.ts';
import { foundIn, pointsOf, reasonOf } from './foundIn.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);
const read = (name: string, bytes: Uint8Array) =>
  readFound({ name, bytes, unit: null, usual: 'feet', order: null, origin: null });

const geo = '{"type":"Point","coordinates":[10,50]}';
const dxf = dxfText({ entities: [line('0', 0, 0, 1, 1)] });

it.each([
  ['lot.geojson', geo, 'points'],
  ['LOT.JSON', geo, 'points'],
  ['plan.DXF', dxf, 'lines'],
  ['pins.csv', 'x,y\n1,2', 'points'],
  ['pins.txt', 'x\ty\n1\t2', 'points'],
  ['pins.tsv', 'x\ty\n1\t2', 'points'],
])('[I14] %s is read by the ending of its name', async (name, text, shape) => {
  expect(foundIn(await read(name, bytesOf(text))).groups.map((group) => group.shape)).toEqual([
    shape,
  ]);
});

it.each([
  [
    'lot.shp',
    geo,
    'expected a file that ends in .geojson, .json, .dxf, .csv, .tsv or .txt, found “lot.shp”',
  ],
  [
    'dxf',
    dxf,
    'expected a file that ends in .geojson, .json, .dxf, .csv, .tsv or .txt, found “dxf”',
  ],
  ['pins.csv', geo, 'expected a list of points by its name, found GeoJSON'],
  ['pins.csv', dxf, 'expected a list of points by its name, found DXF'],
  ['lot.geojson', dxf, 'expected GeoJSON by its name, found DXF'],
  ['plan.dxf', geo, 'expected DXF by its name, found GeoJSON'],
  ['plan.dxf', 'x,y\n1,2', 'line 1: expected a DXF saved as text, found “x,y”'],
  ['plan.dxf', '', 'expected text, found an empty file'],
  ['plan.dxf', 'binary\0', 'expected text, found something else'],
])('[I14] %s with %j is refused in one line', async (name, text, reason) => {
  expect(reasonOf(await read(name, bytesOf(text)))).toBe(reason);
});

it('[I14] letters of older files and of spreadsheets are read', async () => {
  const latin = new Uint8Array([...bytesOf('name,x,y\nCaf'), 0xe9, ...bytesOf(',1,2')]);
  const [point] = pointsOf(foundIn(await read('a.csv', latin)), 'All of it › points');
  expect(point?.name).toBe('Café');
  const wide = new Uint8Array(
    Uint16Array.from([...'\uFEFFname\tx\ty\nJosé\t1\t2'].map((sign) => sign.charCodeAt(0))).buffer,
  );
  const [other] = pointsOf(foundIn(await read('a.txt', wide)), 'All of it › points');
  expect(other?.name).toBe('José');
});

it('[I11] any bytes under any name give a result or one line, and never throw', async () => {
  const name = fc.constantFrom('a.dxf', 'a.geojson', 'a.csv');
  await fc.assert(
    fc.asyncProperty(name, fc.uint8Array({ maxLength: 200 }), async (one, bytes) => {
      expect(reasonOf(await read(one, bytes))).not.toMatch(/\n/);
    }),
  );
  expect(fileText(new Uint8Array(64 * 1024 * 1024 + 1).fill(48)).ok).toBe(false);
});
