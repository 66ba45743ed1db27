import fc from 'fast-check';
import { rotated } from '../../src/geometry/rotated.ts';
import { add } from '../../src/geometry/add.ts';
import { radians } from '../../src/units/radians.ts';
import type { SitePoint } from '../../src/geometry/point.ts';
import type { Radians } from '../../src/units/radians.ts';

/** A coordinate of a yard on the 1/64 in grid, within about 1,300 ft of the origin. */
const coordinate = fc.integer({ min: -1_000_000, max: 1_000_000 }).map((n) => n / 64);

export const sitePoint: fc.Arbitrary<SitePoint> = fc.record({ x: coordinate, y: coordinate });

export const anyAngle: fc.Arbitrary<Radians> = fc
  .double({ min: -Math.PI, max: Math.PI, noNaN: true })
  .map(radians);

/** A motion that keeps every distance and hand: a turn about the origin, then a shift. */
export const rigidMotion = fc.record({ angle: anyAngle, shift: sitePoint }).map(
  ({ angle, shift }) =>
    (point: SitePoint): SitePoint =>
      add(rotated(point, { x: 0, y: 0 }, angle), shift),
);

/** Left and right exchanged. */
export const mirrored = ({ x, y }: SitePoint): SitePoint => ({ x: -x, y });

/** A simple polygon, counter-clockwise: points at rising angles round a centre. */
export const starPolygon: fc.Arbitrary<SitePoint[]> = fc
  .record({
    centre: sitePoint,
    radii: fc.array(fc.integer({ min: 64, max: 6400 }), { minLength: 5, maxLength: 12 }),
  })
  .map(({ centre, radii }) =>
    radii.map((radius, n) => {
      const angle = (2 * Math.PI * n) / radii.length;
      return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
    }),
  );
