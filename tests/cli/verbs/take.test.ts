import { describe, expect, it } from 'vitest';
import { lath } from '../lath.ts';
import { sampleSite } from '../sampleSites.ts';

const yard = sampleSite('back-yard');

describe('lath take', () => {
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

  it.each([
    [
      ['--out', 'yard.shp'],
      '--out: “yard.shp”: expected a file name that ends in .geojson, .dxf or .csv',
    ],
    [['--out', 'y.csv', '--unit', 'rods'], '--unit: “rods”: expected one of feet, metres'],
    [['--out', 'y.csv', '--east', '1,000'], '--east: “1,000”: expected a number such as 2100000'],
    [
      ['--out', 'y.geojson'],
      'yard: this yard does not know where on earth it is: bring in a GeoJSON, or find a mark by satellites, first',
    ],
  ])('[K16] %j is refused in one line, and nothing is written', async (args, reason) => {
    const said = await lath(['take', 'yard', ...args], { yard });
    expect(said).toMatchObject({ code: 2, out: '', err: `${reason}\n` });
    expect([...said.files.keys()]).toEqual(['yard']);
  });
});
