import { describe, expect, it } from 'vitest';
import { openSite } from '../../../src/site/openSite.ts';
import type { Site } from '../../../src/site/site.ts';
import { dxfText, entity, line } from '../../importers/dxf/dxfText.ts';
import { lath } from '../lath.ts';
import { sampleSite } from '../sampleSites.ts';

const siteOf = (text: unknown): Site => {
  const site = openSite(String(text));
  if (!site.ok) throw new Error(site.reason);
  return site.value;
};

const dxf = dxfText({
  units: 2,
  entities: [
    entity(
      'LWPOLYLINE',
      'PROPERTY',
      [90, 3],
      [70, 1],
      [10, 0],
      [20, 0],
      [10, 100],
      [20, 0],
      [10, 100],
      [20, 80],
    ),
    line('WALLS', 10, 10, 40, 10),
    entity('HATCH', 'WALLS'),
  ],
});
const geo = JSON.stringify({
  type: 'FeatureCollection',
  features: [
    {
      type: 'Feature',
      properties: { name: 'Lot 7' },
      geometry: {
        type: 'Polygon',
        coordinates: [
          [
            [-96, 41],
            [-95.999, 41],
            [-95.999, 41.001],
            [-96, 41],
          ],
        ],
      },
    },
    {
      type: 'Feature',
      properties: {},
      geometry: {
        type: 'Polygon',
        coordinates: [
          [
            [-96, 41],
            [-95.999, 41],
            [-96, 41],
          ],
        ],
      },
    },
  ],
});

describe('lath bring', () => {
  it('[K15] prints a site file, named for the file, with what layers are likely to be', async () => {
    const said = await lath(['bring', 'lot 7.dxf'], { 'lot 7.dxf': dxf });
    expect(said).toMatchObject({ code: 0, err: '' });
    const site = siteOf(said.out);
    expect(site.job.name).toBe('lot 7');
    expect(Object.values(site.features)).toMatchObject([{ kind: 'boundary', closed: true }]);
    expect(Object.values(site.marks).map(({ x, y }) => [x, y])).toEqual([
      [0, 0],
      [1200, 0],
      [1200, 960],
    ]);
  });

  it('[K15] writes a file and says what became of each layer, and what was left out', async () => {
    const said = await lath(['bring', 'lot.geojson', '--out', 'yard.json', '--as', 'areas=pool'], {
      'lot.geojson': geo,
    });
    expect(said).toMatchObject({ code: 0, err: '' });
    expect(said.out.split('\n').map((one) => one.trim().replace(/ {2,}/g, ' '))).toEqual([
      'yard.json: a site file',
      'All of it/areas 1 pool',
      'Laid flat about latitude and longitude 41.000500, -95.999500, the middle of the file',
      'Lengths are out by less than 0.001 in 1,000, north by up to 0.00°',
      'Lengths are those near sea level; ground 1,000 ft above it is 0.048 in 1,000 longer',
      'left out: features › 2 › geometry › ring 1: expected 4 positions or more, found 3',
      '',
    ]);
    const site = siteOf(said.files.get('yard.json'));
    expect(Object.values(site.features)).toMatchObject([{ kind: 'pool', label: 'Lot 7' }]);
    expect(site.origin).toEqual({ latitude: 41.0005, longitude: -95.9995 });
  });

  it('[K15] fence lines on a new site are built as the usual 4 ft fence', async () => {
    const fence = dxfText({ units: 2, entities: [line('FENCE', 0, 0, 40, 0)] });
    const said = await lath(['bring', 'yard.dxf'], { 'yard.dxf': fence });
    expect(said).toMatchObject({ code: 0, err: '' });
    const { lines, specs } = siteOf(said.out);
    expect(Object.values(specs)).toMatchObject([{ label: '4 ft chain link', fabricHeight: 48 }]);
    expect(Object.values(lines).map(({ spec }) => spec)).toEqual(Object.keys(specs));
  });

  it('[K15] brings onto a site that is there, fence lines by its first spec', async () => {
    const files = { yard: sampleSite('back-yard'), 'plan.dxf': dxf };
    const args = [
      'bring',
      'plan.dxf',
      '--into',
      'yard',
      '--as',
      'WALLS=fence line',
      '--unit',
      'metres',
      '--json',
    ];
    const said = await lath(args, files);
    expect(said).toMatchObject({ code: 0, err: '' });
    const json = JSON.parse(said.out) as { site: Site; told: string[]; groups: unknown[] };
    const before = siteOf(files.yard);
    expect(Object.keys(json.site.lines)).toHaveLength(Object.keys(before.lines).length + 1);
    expect(json.told[0]).toBe('Read in metres, as chosen');
    expect(json.groups).toContainEqual({
      layer: 'WALLS',
      shape: 'lines',
      count: 1,
      becomes: 'fence line',
    });
  });

  it.each([
    ['points', 'name,x,y\nA,1,2', 'marks'],
    ['GeoJSON', geo, 'features'],
    ['DXF', dxf, 'features'],
  ] as const)('[K15] reads %s from standard input', async (_, text, map) => {
    const said = await lath(['bring', '-'], { '-': text });
    expect(said).toMatchObject({ code: 0, err: '' });
    const site = siteOf(said.out);
    expect(Object.keys(site[map])).not.toEqual([]);
    expect(site.job.name).toBe('');
  });

  it('[K15] reads a list of points in an order that is given', async () => {
    const said = await lath(['bring', 'pins.csv', '--order', 'name, y, x, z, remark'], {
      'pins.csv': '1,10,20,3,IP\n2,11,21,4,IP',
    });
    const site = siteOf(said.out);
    expect(Object.values(site.marks)).toMatchObject([
      { x: 240, y: 120, label: '1 IP' },
      { x: 252, y: 132, label: '2 IP' },
    ]);
    expect(Object.values(site.shots).map(({ z }) => z)).toEqual([36, 48]);
  });

  it.each([
    [
      ['bring', '-'],
      'standard input: line 1: expected a column for x or east, with a unit of ft, in, m, cm, mm or none; found “gate, gate”',
    ],
    [
      ['bring', '-', '--into', '-'],
      '--into: “-”: expected another file, since FILE is standard input',
    ],
    [['bring', 'no.dxf'], 'no.dxf: no such file'],
    [
      ['bring', 'plan.pdf'],
      'plan.pdf: expected a file that ends in .geojson, .json, .dxf, .csv, .tsv or .txt, found “plan.pdf”',
    ],
    [
      ['bring', 'cut.dxf'],
      'cut.dxf: ends too early: expected EOF at its end, so part of it is missing',
    ],
    [
      ['bring', 'points.csv'],
      'points.csv: line 1: expected a column for y or north, with a unit of ft, in, m, cm, mm or none; found “name, x”',
    ],
    [
      ['bring', 'plan.dxf', '--as', 'ROOF=building'],
      '--as: “ROOF=building”: expected LAYER=KIND for a layer of the file: PROPERTY, WALLS',
    ],
    [
      ['bring', 'plan.dxf', '--as', 'WALLS=pool'],
      '--as: “WALLS=pool”: expected one of leave out; boundary; fence line; utility, electric; utility, gas; utility, communication; utility, water; utility, reclaimed; utility, sewer',
    ],
    [
      ['bring', 'plan.dxf', '--as', 'PROPERTY=leave out'],
      'plan.dxf: nothing is chosen: expected --as LAYER=KIND for one of PROPERTY/areas, WALLS/lines',
    ],
    [
      ['bring', 'plan.dxf', '--unit', 'rods'],
      '--unit: “rods”: expected one of feet, US survey feet, inches, yards, metres, centimetres, millimetres',
    ],
    [
      ['bring', 'plan.dxf', '--out', 'yard.dxf'],
      '--out: “yard.dxf”: expected a file name that ends in .json',
    ],
  ])('[K15] %j is refused in one line', async (args, reason) => {
    const files = {
      'plan.dxf': dxf,
      'cut.dxf': dxf.slice(0, 100),
      'points.csv': 'name,x\nA,1',
      'plan.pdf': 'x',
      '-': 'gate,gate',
    };
    expect(await lath(args, files)).toMatchObject({ code: 2, out: '', err: `${reason}\n` });
  });
});
