import { expect, it } from 'vitest';
import { fromGeoJson } from '../../../src/importers/geojson/fromGeoJson.ts';
import { foundIn } from '../foundIn.ts';

const lot = (x: number, y: number) => ({
  type: 'Polygon',
  coordinates: [
    [
      [x, y],
      [x + 0.001, y],
      [x + 0.001, y + 0.001],
      [x, y],
    ],
  ],
});

it('[I9] of places far apart the one with the most is kept, and the others are told', () => {
  const geometries = [lot(-100, 40), lot(-80, 30), lot(-80, 30.01), lot(-90, 45)];
  const text = JSON.stringify({ type: 'GeometryCollection', geometries });
  const found = foundIn(fromGeoJson(text, null));
  expect(found.origin).toEqual({ latitude: 30.0055, longitude: -79.9995 });
  expect(found.told.at(-1)).toBe(
    'Kept what lies together: 2 of 4 things; the others lie over 10 miles off',
  );
  expect(found.refused.map(({ where }) => /geometr\w+ \d/.exec(where)?.[0])).toEqual([
    'geometry 1',
    'geometry 4',
  ]);
});
