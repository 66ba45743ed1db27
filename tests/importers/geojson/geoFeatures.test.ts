import { describe, expect, it } from 'vitest';
import { fromGeoJson } from '../../../src/importers/geojson/fromGeoJson.ts';
import { foundIn } from '../foundIn.ts';

describe('the features of a GeoJSON', () => {
  it('[I22] a parcel of some kind of use stays without a layer, a layer by name has one', () => {
    const at = (properties: object, longitude: number) => ({
      type: 'Feature',
      properties,
      geometry: { type: 'Point', coordinates: [longitude, 41] },
    });
    const features = [
      at({ kind: 'residential' }, -96),
      at({ Layer: 'TREES' }, -96.0001),
      at({ kind: 'mark' }, -96.0002),
    ];
    const found = foundIn(
      fromGeoJson(JSON.stringify({ type: 'FeatureCollection', features }), null),
    );
    expect(found.groups.map(({ layer }) => layer)).toEqual(['All of it', 'mark', 'TREES']);
  });
});
