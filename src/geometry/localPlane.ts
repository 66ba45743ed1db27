import proj4 from 'proj4';
import type { SitePoint } from './point.ts';

/** A place on earth in degrees (WGS 84): latitude north, longitude east of Greenwich above zero. */
export interface PlaceOnEarth {
  readonly latitude: number;
  readonly longitude: number;
}

/** The ground about a place laid flat, both ways. */
export interface LocalPlane {
  /** Inches east and north of the place. */
  readonly toSite: (place: PlaceOnEarth) => SitePoint;
  readonly toEarth: (point: SitePoint) => PlaceOnEarth;
}

/** Metres in an inch, exactly (international yard and pound, 1959). */
const metre = 0.0254;

/**
 * The plane about a place: transverse Mercator on the WGS 84 ellipsoid with true scale along the
 * meridian of `origin`, which is at 0, 0; y is north there. Lengths are those on the ellipsoid: near
 * sea level those on the ground. What `laidFlat` says of it holds; it is meant for a few miles.
 */
export const localPlane = ({ latitude, longitude }: PlaceOnEarth): LocalPlane => {
  const plane = proj4(
    `+proj=tmerc +lat_0=${latitude} +lon_0=${longitude} +k=1 +x_0=0 +y_0=0 +ellps=WGS84 +units=m`,
  );
  return {
    toSite: (place) => {
      const [x = NaN, y = NaN] = plane.forward([place.longitude, place.latitude]);
      return { x: x / metre, y: y / metre };
    },
    toEarth: (point) => {
      const [east = NaN, north = NaN] = plane.inverse([point.x * metre, point.y * metre]);
      return { latitude: north, longitude: east };
    },
  };
};
