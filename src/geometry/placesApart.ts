import { inches, type Inches } from '../units/inches.ts';

/** The mean radius of the earth, 6,371.0 km (IUGG: (2a + b) / 3 of the ellipsoid), in inches. */
const earth = 6_371_008.8 / 0.0254;

interface Place {
  readonly latitude: number;
  readonly longitude: number;
}

/** An angle in degrees as the same turn from -180 to 180. */
const halfTurn = (degrees: number): number => degrees - 360 * Math.round(degrees / 360);

/**
 * Roughly how far two places on earth (degrees) near one another are apart, in inches, as on a ball:
 * out by less than 1 % of it where they are within a mile and 70 degrees of the equator. No map is
 * needed for it, as it is for `localPlane`.
 */
export const placesApart = (a: Place, b: Place): Inches => {
  const radian = Math.PI / 180;
  const north = (b.latitude - a.latitude) * radian;
  const middle = ((a.latitude + b.latitude) / 2) * radian;
  const east = halfTurn(b.longitude - a.longitude) * radian * Math.cos(middle);
  return inches(earth * Math.hypot(north, east));
};
