import { inches, type Inches } from '../units/inches.ts';

/** The mean radius of the earth, 6,371.0 km (IUGG: (2a + b) / 3 of the ellipsoid), in inches. */
const earth = 6_371_008.8 / 0.0254;

/** By how much a local plane is out at a distance from its origin. */
export interface LaidFlat {
  /** By what share lengths are too long at most: 1e-6 is 1/80 in in 1,000 ft. */
  readonly share: number;
  /** By what angle the y axis is off true north at most, in radians. */
  readonly north: number;
}

/**
 * How far the plane about a place of so much latitude (degrees) is out so many inches from it: the
 * scale of a transverse Mercator is 1 + x² / 2R² at x from its meridian, and its grid turns by
 * x tan φ / R. First terms of the series; J. P. Snyder, Map Projections: A Working Manual, USGS
 * Professional Paper 1395 (1987), section 8; from memory.
 */
export const laidFlat = (away: Inches, latitude: number): LaidFlat => ({
  share: away ** 2 / (2 * earth ** 2),
  north: (away * Math.abs(Math.tan((latitude * Math.PI) / 180))) / earth,
});

/** What a height above the ellipsoid adds to a length on it: ground that much higher is longer. */
export const lengthenedBy = (length: Inches, height: Inches): Inches =>
  inches((length * height) / earth);
