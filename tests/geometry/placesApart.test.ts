import fc from 'fast-check';
import geodesic from 'geographiclib-geodesic';
import { expect, it } from 'vitest';
import { farthest } from '../../src/geometry/tolerance.ts';
import { localPlane } from '../../src/geometry/localPlane.ts';
import { originAt } from '../../src/geometry/originAt.ts';
import { placesApart } from '../../src/geometry/placesApart.ts';

// GeographicLib (C. F. F. Karney, Algorithms for geodesics, J. Geodesy 87, 2013)
const earth = geodesic.Geodesic.WGS84;
const latitude = fc.double({ min: -70, max: 70, noNaN: true });
const longitude = fc.double({ min: -180, max: 180, noNaN: true });
const turn = fc.double({ min: -180, max: 180, noNaN: true });

it('[G30] the way between two places near one another is out by less than 1 % from the geodesic', () => {
  fc.assert(
    fc.property(
      latitude,
      longitude,
      turn,
      fc.double({ min: 1, max: 1600, noNaN: true }),
      (lat, lon, azi, metres) => {
        const end = earth.Direct(lat, lon, azi, metres);
        const apart = placesApart(
          { latitude: lat, longitude: lon },
          { latitude: end.lat2 ?? NaN, longitude: end.lon2 ?? NaN },
        );
        expect(Math.abs((apart * 0.0254) / metres - 1)).toBeLessThan(0.01);
      },
    ),
  );
});

it('[G30] places on either side of the date line are near one another', () => {
  const apart = placesApart(
    { latitude: 0, longitude: 179.9999 },
    { latitude: 0, longitude: -179.9999 },
  );
  // 0.0002 degrees of the equator of the ball: 22.24 m
  expect(apart * 0.0254).toBeCloseTo(22.239, 2);
});

it('[G31] a place comes to lie where it is wanted, to 1/64 in over the whole of the largest site', () => {
  const along = fc.double({ min: -farthest, max: farthest, noNaN: true });
  fc.assert(
    fc.property(latitude, longitude, along, along, (lat, lon, x, y) => {
      const place = { latitude: lat, longitude: lon };
      const found = localPlane(originAt(place, { x, y })).toSite(place);
      expect(Math.hypot(found.x - x, found.y - y)).toBeLessThan(1 / 64);
    }),
  );
});
