import { check } from '@placemarkio/check-geojson';
import fc from 'fast-check';
import geodesic from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import { distance } from '../../../src/geometry/distance.ts';
import { fromGeoJson } from '../../../src/importers/geojson/fromGeoJson.ts';
import { foundIn, pathsOf, pointsOf, reasonOf } from '../foundIn.ts';

const read = (document: unknown, origin: Parameters<typeof fromGeoJson>[1] = null) =>
  foundIn(fromGeoJson(JSON.stringify(document), origin));
const feature = (geometry: unknown, properties: unknown = null) => ({
  type: 'Feature',
  geometry,
  properties,
});
const collection = (...features: readonly unknown[]) => ({ type: 'FeatureCollection', features });
const ring = (x = 0, y = 0, size = 0.001) => [
  [x, y],
  [x + size, y],
  [x + size, y + size],
  [x, y + size],
  [x, y],
];
const polygon = (...rings: readonly unknown[]) => ({ type: 'Polygon', coordinates: rings });

describe('what a GeoJSON has', () => {
  it('[I4] parcels with their names, holes of their own, lines and points with heights', () => {
    const found = read(
      collection(
        feature(polygon(ring(10, 50), ring(10.0002, 50.0002, 0.0005)), { NAME: 'Lot 7' }),
        feature(
          { type: 'MultiPolygon', coordinates: [[ring(10, 50.01)], [ring(10, 50.02)]] },
          { name: 'Lots' },
        ),
        feature({
          type: 'MultiLineString',
          coordinates: [
            [
              [10, 50],
              [10.001, 50],
            ],
            [
              [10, 50],
              [10, 50.001],
              [10, 50.002],
            ],
          ],
        }),
        {
          ...feature({
            type: 'GeometryCollection',
            geometries: [{ type: 'Point', coordinates: [10, 50, 254] }],
          }),
          id: 12,
        },
        feature(
          {
            type: 'MultiPoint',
            coordinates: [
              [10, 50],
              [10.0001, 50],
            ],
          },
          { title: 'well' },
        ),
        feature(null),
      ),
    );
    expect(found.groups.map(({ shape }) => shape)).toEqual([
      'areas',
      'holes',
      'lines',
      'points',
      'heights',
    ]);
    expect(pathsOf(found, 'All of it › areas').map(({ name }) => name)).toEqual([
      'Lot 7',
      'Lots',
      'Lots',
    ]);
    expect(pathsOf(found, 'All of it › areas')[0]?.points).toHaveLength(4);
    expect(pathsOf(found, 'All of it › holes').map(({ name }) => name)).toEqual(['Lot 7, hole']);
    expect(pathsOf(found, 'All of it › lines').map(({ points }) => points.length)).toEqual([2, 3]);
    expect(pointsOf(found, 'All of it › points').map(({ name }) => name)).toEqual([
      '12',
      'well',
      'well',
    ]);
    expect(pointsOf(found, 'All of it › heights').map(({ z }) => z)).toEqual([10_000]);
    expect(found.told).toContain('Left out, since they say no place: 1');
    expect(found.refused).toEqual([]);
  });

  it('[I4] a feature or a geometry may stand alone', () => {
    expect(read(polygon(ring())).groups).toHaveLength(1);
    expect(read(feature(polygon(ring()))).groups).toHaveLength(1);
  });

  it.each([
    [
      polygon(ring().slice(0, 4)),
      'features › 2 › geometry › ring 1',
      'expected a ring that ends where it begins, found one that stays open',
    ],
    [
      polygon([
        [0, 0],
        [1, 0],
        [0, 0],
      ]),
      'features › 2 › geometry › ring 1',
      'expected 4 positions or more, found 3',
    ],
    [
      polygon([
        [0, 0],
        [0.001, 0.001],
        [0.001, 0],
        [0, 0.001],
        [0, 0],
      ]),
      'features › 2 › geometry › ring 1',
      'crosses itself at 0.0005, 0.0005',
    ],
    [
      polygon([
        [0, 0],
        [0, 'a'],
        [1, 1],
        [0, 0],
      ]),
      'features › 2 › geometry › ring 1',
      'position 2: expected longitude (-180 to 180), then latitude (-90 to 90), found [0,"a"]',
    ],
    [polygon('no'), 'features › 2 › geometry › ring 1', 'expected a list of positions, found "no"'],
    [{ type: 'Polygon' }, 'features › 2 › geometry', 'expected a list of rings, found nothing'],
    [
      { type: 'LineString', coordinates: [[0, 0]] },
      'features › 2 › geometry',
      'expected 2 positions or more, found 1',
    ],
    [
      {
        type: 'LineString',
        coordinates: [
          [0, 0],
          [0, 0],
        ],
      },
      'features › 2 › geometry',
      'expected a line of some length, found one spot',
    ],
    [
      { type: 'Point', coordinates: [40.7, -105.2] },
      'features › 2 › geometry',
      'expected longitude (-180 to 180), then latitude (-90 to 90), found [40.7,-105.2]: latitude and longitude may be the wrong way round',
    ],
    [
      { type: 'Point', coordinates: [2_700_000, 215_000] },
      'features › 2 › geometry',
      'expected longitude (-180 to 180), then latitude (-90 to 90), found [2700000,215000]: these may be feet or metres of a map',
    ],
    [
      { type: 'Circle', coordinates: [0, 0] },
      'features › 2 › geometry',
      'type: expected Point, MultiPoint, LineString, MultiLineString, Polygon, MultiPolygon, GeometryCollection; found "Circle"',
    ],
    [
      { type: 'Point', coordinates: [0.5, 0.5] },
      'features › 2 › geometry',
      'lies over 10 miles from 0, 0 of the yard',
    ],
    [
      { type: 'GeometryCollection', geometries: [{ type: 'Oval', coordinates: [] }] },
      'features › 2 › geometry › geometry 1',
      'type: expected Point, MultiPoint, LineString, MultiLineString, Polygon, MultiPolygon, GeometryCollection; found "Oval"',
    ],
    [
      { type: 'Point', coordinates: [0, 0, 1e9] },
      'features › 2 › geometry',
      'lies over 10 miles above or below 0',
    ],
    [7, 'features › 2 › geometry', 'expected a geometry, found 7'],
  ])(
    '[I4] %j is refused by its place, and the good ones beside it are brought',
    (geometry, where, reason) => {
      const found = read(
        collection(feature(polygon(ring())), feature(geometry), feature(polygon(ring(0.002)))),
        { latitude: 0, longitude: 0 },
      );
      expect(found.refused).toEqual([{ where, reason }]);
      expect(pathsOf(found, 'All of it › areas')).toHaveLength(2);
    },
  );

  it.each([
    ['', 'ends too early: expected JSON, found “” at its end'],
    [
      '{"type":"FeatureColl',
      'ends too early: expected JSON, found “{"type":"FeatureColl” at its end',
    ],
    ['{"type":}', 'expected JSON, found “{"type":}”'],
    ['[1]', 'expected a GeoJSON object, found [1]'],
    [
      '{"type":"Topology"}',
      'type: expected FeatureCollection, Feature or a geometry, found "Topology"',
    ],
    ['{"type":"FeatureCollection","features":{}}', 'features: expected a list, found {}'],
    ['{"type":"FeatureCollection","features":[]}', 'expected parcels, lines or points, found none'],
    [
      JSON.stringify({
        ...collection(),
        crs: { type: 'name', properties: { name: 'urn:ogc:def:crs:EPSG::2272' } },
      }),
      'crs: expected longitude and latitude on WGS 84 (RFC 7946), found "urn:ogc:def:crs:EPSG::2272"',
    ],
    [
      JSON.stringify(collection(feature(polygon(ring().slice(1))))),
      'features › 1 › geometry › ring 1: expected a ring that ends where it begins, found one that stays open',
    ],
  ])('[I4] %j is refused in one line', (text, reason) => {
    expect(reasonOf(fromGeoJson(text, null))).toBe(reason);
  });

  it('[I4] holes of a ring that is refused are refused with it, whatever is wrong with it', () => {
    const hole = ring(0.0002, 0.0002, 0.0001);
    const crossing = [
      [0, 0],
      [0.001, 0.001],
      [0.001, 0],
      [0, 0.001],
      [0, 0],
    ];
    const found = read(
      collection(
        feature(polygon(ring().slice(1), hole)),
        feature(polygon(crossing, hole)),
        feature(polygon(ring(), hole, hole.slice(1))),
      ),
    );
    const holes = found.refused.filter(({ reason }) => reason.startsWith('is a hole'));
    expect(holes).toEqual([
      {
        where: 'features › 1 › geometry › ring 2',
        reason: 'is a hole in a ring that cannot be brought',
      },
      {
        where: 'features › 2 › geometry › ring 2',
        reason: 'is a hole in a ring that cannot be brought',
      },
    ]);
    expect(pathsOf(found, 'All of it › areas')).toHaveLength(1);
    expect(pathsOf(found, 'All of it › holes')).toHaveLength(1);
  });

  it('[I4] what has no coordinates says no place, and heights of lines are left out: both are told', () => {
    const empty = ['Point', 'LineString', 'Polygon', 'MultiPoint'].map((type) =>
      feature({ type, coordinates: [] }),
    );
    const slope = {
      type: 'LineString',
      coordinates: [
        [0, 0, 0],
        [0.001, 0, 3],
      ],
    };
    const level = { ...slope, coordinates: slope.coordinates.map(([x, y]) => [x, y, 0]) };
    const none = feature({ type: 'GeometryCollection', geometries: [] });
    const found = read(collection(...empty, none, feature(slope), feature(level)));
    expect(found.told.slice(-2)).toEqual([
      'Lines lie flat on a yard: the heights of 1 are left out',
      'Left out, since they say no place: 5',
    ]);
    expect(found.refused).toEqual([]);
  });

  it('[I4] longitude and latitude on WGS 84 by its older name is read', () => {
    const crs = { type: 'name', properties: { name: 'urn:ogc:def:crs:OGC:1.3:CRS84' } };
    expect(read({ ...collection(feature(polygon(ring()))), crs }).groups).toHaveLength(1);
  });

  it('[I5] lengths are those of geodesics, about the middle of the file, and where that is is told', () => {
    const places = [
      [-75.3, 40.2],
      [-75.2985, 40.2004],
      [-75.2991, 40.2012],
    ] as const;
    const found = read({ type: 'LineString', coordinates: places });
    const [line] = pathsOf(found, 'All of it › lines');
    expect(found.origin).toEqual({ latitude: 40.2006, longitude: -75.29925 });
    expect(found.told).toEqual([
      'Laid flat about latitude and longitude 40.200600, -75.299250, the middle of the file',
      'Lengths are out by less than 0.001 in 1,000, north by up to 0.00°',
      'Lengths are those near sea level; ground 1,000 ft above it is 0.048 in 1,000 longer',
    ]);
    places.slice(1).forEach(([lon, lat], n) => {
      const [lon0, lat0] = places[n] ?? [NaN, NaN];
      const metres = geodesic.Geodesic.WGS84.Inverse(lat0, lon0, lat, lon).s12 ?? NaN;
      const [a, b] = [line?.points[n], line?.points[n + 1]];
      if (a === undefined || b === undefined) throw new Error('expected a line');
      expect(distance(a, b)).toBeCloseTo(metres / 0.0254, 3);
    });
  });

  it('[I5] about where a site is, what is there comes to 0, 0; what is far away is refused', () => {
    const origin = { latitude: 40.2, longitude: -75.3 };
    const found = read({ type: 'Point', coordinates: [-75.3, 40.2] }, origin);
    const [point] = pointsOf(found, 'All of it › points');
    expect(Math.hypot(point?.at.x ?? NaN, point?.at.y ?? NaN)).toBeLessThan(1e-6);
    expect(found.origin).toEqual(origin);
    expect(found.told[0]).toContain('where 0, 0 of this yard is');
    const far = JSON.stringify({ type: 'Point', coordinates: [-74, 40.2] });
    expect(reasonOf(fromGeoJson(far, origin))).toBe(
      'geometry: lies over 10 miles from 0, 0 of the yard',
    );
  });

  it('[I4] takes and refuses the same documents as another library', () => {
    const number = fc.oneof(
      fc.double({ min: -0.01, max: 0.01, noNaN: true }),
      fc.constantFrom(null, 'x' as never),
    );
    const good = fc.tuple(
      fc.double({ min: -0.01, max: 0.01, noNaN: true }),
      fc.double({ min: -0.01, max: 0.01, noNaN: true }),
    );
    const position = fc.oneof(
      { weight: 12, arbitrary: good },
      { weight: 1, arbitrary: fc.array(number, { maxLength: 3 }) },
    );
    const line = fc.array(position, { maxLength: 4 });
    const ringOf = line.map((all) => [...all, ...all.slice(0, 1)]);
    const geometry = fc.oneof(
      fc.record({ type: fc.constant('Point'), coordinates: position }),
      fc.record({ type: fc.constant('LineString'), coordinates: line }),
      fc.record({ type: fc.constant('MultiPoint'), coordinates: line }),
      fc.record({
        type: fc.constant('Polygon'),
        coordinates: fc.array(fc.oneof(ringOf, line), { minLength: 1, maxLength: 2 }),
      }),
      fc.record({
        type: fc.constantFrom('Point', 'Polygon', 'Oval'),
        coordinates: fc.constantFrom(null, [], {}, 3),
      }),
    );
    // what only one of the two asks: lines of some length, rings that do not cross, something in it
    const ours = /some length|crosses itself|expected parcels/;
    let [taken, refused] = [0, 0];
    fc.assert(
      fc.property(geometry, (one) => {
        // RFC 7946, 3.1, leaves it to who reads whether these are at fault or no geometry
        fc.pre(!Array.isArray(one.coordinates) || one.coordinates.length > 0);
        const text = JSON.stringify({ type: 'Feature', properties: {}, geometry: one });
        let theirs = true;
        try {
          check(text);
        } catch {
          theirs = false;
        }
        const found = fromGeoJson(text, { latitude: 0, longitude: 0 });
        const reasons = found.ok ? found.value.refused.map(({ reason }) => reason) : [found.reason];
        const faults = reasons.filter((reason) => !ours.test(reason));
        if (theirs) taken += 1;
        else refused += 1;
        expect(faults.length === 0, `${text}\n${reasons.join('\n')}`).toBe(theirs);
      }),
      { numRuns: 2000 },
    );
    expect(Math.min(taken, refused)).toBeGreaterThan(300);
  });

  it('[I11] any text and any cut gives a result or one line, and never throws', () => {
    fc.assert(
      fc.property(fc.oneof(fc.json(), fc.string()), (text) => {
        expect(reasonOf(fromGeoJson(text, null))).not.toMatch(/\n/);
      }),
    );
    const whole = JSON.stringify(collection(feature(polygon(ring())), feature(polygon(ring()))));
    fc.assert(
      fc.property(fc.nat(whole.length - 1), (at) => {
        expect(fromGeoJson(whole.slice(0, at), null).ok).toBe(false);
      }),
    );
  });

  it('[I12] a ring of 50,000 corners is read, and looked at for crossings, within ten seconds', () => {
    const corners = Array.from({ length: 50_000 }, (_, n) => {
      const angle = (n * 2 * Math.PI) / 50_000;
      const size = 0.01 * (1 + 0.2 * Math.cos(40 * angle));
      return [size * Math.cos(angle), size * Math.sin(angle)];
    });
    const start = performance.now();
    const found = read(polygon([...corners, corners[0]]));
    expect(performance.now() - start).toBeLessThan(10_000);
    expect(found.refused).toEqual([]);
  });
});
