import { describe, expect, it } from 'vitest';
import { sheetTableNames, sheetTables } from '../../../src/drawing/tables/sheetTables.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { readCsv } from '../../../src/importers/csv/readCsv.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { lath } from '../lath.ts';
import { sampleSite } from '../sampleSites.ts';

const yard = sampleSite('back-yard');

describe('lath take', { timeout: 60_000 }, () => {
  it('[K16] writes what the ending asks for', async () => {
    const dxf = await lath(['take', 'yard', '--out', 'yard.dxf'], { yard });
    expect(dxf.err).toBe('');
    expect(dxf.out).toMatch(/^yard\.dxf: \d+ fence lines?, \d+ posts, \d+ gates\n$/);
    expect(String(dxf.files.get('yard.dxf'))).toMatch(/^0\nSECTION\n[\s\S]*\n0\nEOF/);
    const csv = await lath(
      ['take', 'yard', '--out', 'yard.csv', '--unit', 'metres', '--east', '1000'],
      { yard },
    );
    expect(String(csv.files.get('yard.csv'))).toMatch(/^Point,Northing \(m\),Easting \(m\),/);
    const known = yard.replace('"origin": null', '"origin": {"latitude": 41, "longitude": -96}');
    const geo = await lath(['take', 'yard', '--out', 'yard.geojson'], { yard: known });
    expect(JSON.parse(String(geo.files.get('yard.geojson')))).toMatchObject({
      type: 'FeatureCollection',
    });
  });

  it('[K16] what is added to eastings is in the unit of the stakes', async () => {
    const eastOf = async (...more: string[]) => {
      const said = await lath(['take', 'yard', '--out', 'y.csv', ...more], { yard });
      return Number(String(said.files.get('y.csv')).split('\r\n')[1]?.split(',')[2]);
    };
    expect((await eastOf('--east', '2100000.5')) - (await eastOf())).toBeCloseTo(2_100_000.5, 3);
    const metres = ['--unit', 'metres'];
    expect((await eastOf(...metres, '--east=-7')) - (await eastOf(...metres))).toBeCloseTo(-7, 3);
  });

  it.each(sheetTableNames)('[C23] --table %s writes that table', async (table) => {
    const args = ['take', 'yard', '--out', 't.csv', '--table', table, '--json'];
    const said = await lath(args, { yard });
    const site = openSite(yard);
    if (!site.ok) throw new Error(site.reason);
    const { of, tables } = sheetTables(table, site.value, layOutSite(site.value));
    const rows = readCsv(String(said.files.get('t.csv')));
    if (!rows.ok) throw new Error(rows.reason);
    const due = tables.flatMap(({ title, rows: own }) => own.map((row) => [title, ...row]));
    expect(rows.value.slice(1).map(({ cells }) => cells)).toEqual(due);
    expect(JSON.parse(said.out)).toEqual({ file: 't.csv', rows: due.length });
    const none = tables.length === 0 ? 'the file is empty' : 'the file has its headings alone';
    expect(said.err).toBe(due.length > 0 ? '' : `t.csv: this table has no rows here: ${none}\n`);
    if (tables.length > 0) expect(rows.value[0]?.cells[0]).toBe(of);
  });

  it('[C23] stakes are written unless a table is named', async () => {
    const textOf = async (...more: string[]) =>
      (await lath(['take', 'yard', '--out', 't.csv', ...more], { yard })).files.get('t.csv');
    expect(await textOf('--table', 'stakes')).toBe(await textOf());
    expect(await textOf()).toMatch(/^Point,Northing/);
  });

  it.each(['pdf', 'svg'])('[C22] writes the pages that sheet writes as .%s', async (ending) => {
    const args = ['yard', '--out', `y.${ending}`, '--paper', 'a4'];
    const [taken, sheet] = [
      await lath(['take', ...args], { yard }),
      await lath(['sheet', ...args], { yard }),
    ];
    expect(taken).toEqual(sheet);
    expect(taken.files.size).toBeGreaterThan(1);
  });

  it.each([
    [
      ['--out', 'yard.shp'],
      '--out: “yard.shp”: expected a file name that ends in .geojson, .dxf, .csv, .pdf, .svg or .png',
    ],
    [['--out', 'y.csv', '--unit', 'rods'], '--unit: “rods”: expected one of feet, metres'],
    [['--out', 'y.csv', '--east', '1,000'], '--east: “1,000”: expected a number such as 2100000'],
    [
      ['--out', 'y.geojson'],
      'yard: this yard does not know where on earth it is: bring in a GeoJSON, or find a mark by satellites, first',
    ],
    [
      ['--out', 'y.csv', '--table', 'rooms'],
      `--table: “rooms”: expected one of stakes, ${sheetTableNames.join(', ')}`,
    ],
    [['--out', 'y.dxf', '--table', 'holes'], '--table: only a file that ends in .csv is a table'],
    [['--out', 'y.pdf', '--table', 'holes'], '--table: only a file that ends in .csv is a table'],
    [['--out', 'y.dxf', '--dpi', '100'], '--dpi: only a file that ends in .png has a resolution'],
    [['--out', 'y.svg', '--dpi', '100'], '--dpi: only a file that ends in .png has a resolution'],
    [['--out', 'y.png', '--dpi', '60'], '--dpi: “60”: expected 72 to 600 dpi'],
    [['--out', 'y.png', '--dpi', '72.5'], '--dpi: “72.5”: expected a whole number'],
    [
      ['--out', 'y.png', '--dpi', '600', '--paper', 'arch-d', '--way', 'portrait'],
      'PNG of ARCH D at 600 dpi: 312 million pixels are too many to make: expected 304 dpi or less',
    ],
  ])('[K16] [C21] %j is refused in one line, and nothing is written', async (args, reason) => {
    const said = await lath(['take', 'yard', ...args], { yard });
    expect(said).toMatchObject({ code: 2, out: '', err: `${reason}\n` });
    expect([...said.files.keys()]).toEqual(['yard']);
  });
});

it('[C23] a table without rows says so on standard error, with its headings written and code 0', async () => {
  const said = await lath(['take', 'yard', '--out', 't.csv', '--table', 'towns'], { yard });
  expect(said.out).toBe('t.csv: 0 rows\n');
  expect(said.err).toBe('t.csv: this table has no rows here: the file has its headings alone\n');
  expect(said.code).toBe(0);
  expect(String(said.files.get('t.csv')).split('\r\n')).toHaveLength(2);
});
