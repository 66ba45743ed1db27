import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bearing } from '../../src/geometry/bearing.ts';
import { distance } from '../../src/geometry/distance.ts';
import { principalAngle } from '../../src/geometry/principalAngle.ts';
import { rotated } from '../../src/geometry/rotated.ts';
import { fromDegrees } from '../../src/units/radians.ts';
import { anyAngle, sitePoint } from './arbitraries.ts';

describe('rotated', () => {
  it('turns from east to north about the centre', () => {
    const point = rotated({ x: 6, y: 5 }, { x: 2, y: 2 }, fromDegrees(90));
    expect(point.x).toBeCloseTo(-1, 12);
    expect(point.y).toBeCloseTo(6, 12);
  });

  it('[G2] keeps the distance from the centre and adds the angle to the bearing', () => {
    fc.assert(
      fc.property(sitePoint, sitePoint, anyAngle, (point, centre, angle) => {
        fc.pre(distance(point, centre) > 1);
        const turned = rotated(point, centre, angle);
        expect(distance(turned, centre)).toBeCloseTo(distance(point, centre), 8);
        const off = bearing(centre, turned) - bearing(centre, point) - angle;
        expect(principalAngle(off)).toBeCloseTo(0, 8);
      }),
    );
  });
});
