import fc from 'fast-check';
import geodesic from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import { distance } from '../../src/geometry/distance.ts';
import { laidFlat, lengthenedBy } from '../../src/geometry/laidFlat.ts';
import { localPlane } from '../../src/geometry/localPlane.ts';
import { inches } from '../../src/units/inches.ts';

// GeographicLib (C. F. F. Karney, Algorithms for geodesics, J. Geodesy 87, 2013): geodesics on the
// ellipsoid without any map projection
const earth = geodesic.Geodesic.WGS84;
const mile = 63_360;
const latitude = fc.double({ min: -70, max: 70, noNaN: true });
const longitude = fc.double({ min: -179, max: 179, noNaN: true });
const reach = (miles: number) => fc.double({ min: -miles * mile, max: miles * mile, noNaN: true });

describe('the ground about a place laid flat', () => {
  it('[G22] places two miles off come out where the geodesic of another library ends', () => {
    fc.assert(
      fc.property(latitude, longitude, reach(1.4), reach(1.4), (lat, lon, x, y) => {
        const plane = localPlane({ latitude: lat, longitude: lon });
        const place = plane.toEarth({ x, y });
        const found = earth.Inverse(lat, lon, place.latitude, place.longitude);
        const flat = Math.hypot(x, y);
        const { share, north } = laidFlat(inches(flat), lat);
        const length = (found.s12 ?? NaN) / 0.0254;
        expect(Math.abs(length - flat)).toBeLessThanOrEqual(flat * share + 1e-4);
        if (flat < 100) return;
        const towards = ((found.azi1 ?? NaN) * Math.PI) / 180;
        const off = Math.hypot(x - flat * Math.sin(towards), y - flat * Math.cos(towards));
        // on the meridian of the origin north is north; the chord is off by a share of the curve
        expect(off).toBeLessThanOrEqual(flat * (share + north ** 2) + 1e-3);
      }),
    );
  });

  it('[G22] lengths two miles off are out by less than what is said, and by less than 0.001 ft in 1,000 ft', () => {
    fc.assert(
      fc.property(latitude, longitude, reach(1.4), reach(1.4), (lat, lon, x, y) => {
        const plane = localPlane({ latitude: lat, longitude: lon });
        const [a, b] = [
          { x, y },
          { x: x + 12_000, y: y - 300 },
        ];
        const [from, to] = [plane.toEarth(a), plane.toEarth(b)];
        const found = earth.Inverse(from.latitude, from.longitude, to.latitude, to.longitude);
        const true12 = (found.s12 ?? NaN) / 0.0254;
        const { share } = laidFlat(inches(Math.hypot(Math.abs(x) + 12_000, y)), lat);
        expect(Math.abs(distance(a, b) - true12)).toBeLessThanOrEqual(share * 12_100 + 1e-4);
      }),
    );
    expect(laidFlat(inches(2 * mile), 45).share * 1000).toBeLessThan(0.001);
  });

  it('[G22] there and back is the same point, to a thousandth of an inch', () => {
    fc.assert(
      fc.property(latitude, longitude, reach(10), reach(10), (lat, lon, x, y) => {
        const plane = localPlane({ latitude: lat, longitude: lon });
        expect(distance(plane.toSite(plane.toEarth({ x, y })), { x, y })).toBeLessThan(1e-3);
      }),
    );
  });

  it('[G22] ground 5,000 ft above the ellipsoid is 0.239 ft in 1,000 ft longer', () => {
    // h / R by hand: 1,524 m ÷ 6,371,009 m = 2.392e-4
    expect(lengthenedBy(inches(12_000), inches(60_000)) / 12).toBeCloseTo(0.239, 3);
  });
});
