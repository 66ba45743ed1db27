import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { turn } from '../../src/geometry/turn.ts';
import { toDegrees } from '../../src/units/radians.ts';
import { mirrored, rigidMotion, sitePoint, starPolygon } from './arbitraries.ts';

describe('turn', () => {
  const [a, b] = [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
  ];

  it('[G7] is 0 straight on, positive to the left, negative to the right, π straight back', () => {
    expect(turn(a, b, { x: 25, y: 0 })).toBe(0);
    expect(toDegrees(turn(a, b, { x: 10, y: 5 }))).toBe(90);
    expect(toDegrees(turn(a, b, { x: 20, y: -10 }))).toBe(-45);
    expect(turn(a, b, { x: 3, y: 0 })).toBe(Math.PI);
    expect(turn(a, b, { x: 3, y: -0 })).toBe(Math.PI);
  });

  it('is 0 where a leg has no length', () => {
    expect(turn(a, a, b)).toBe(0);
    expect(turn(a, b, b)).toBe(0);
  });

  it('[G7] the turns of a closed chain that does not cross itself add up to 2π', () => {
    fc.assert(
      fc.property(starPolygon, rigidMotion, (polygon, motion) => {
        const chain = polygon.map(motion);
        const at = (n: number) => chain[n % chain.length] ?? a;
        const turns = chain.map((point, n) => turn(point, at(n + 1), at(n + 2)));
        expect(turns.reduce<number>((sum, one) => sum + one, 0)).toBeCloseTo(2 * Math.PI, 6);
      }),
    );
  });

  it('[G2] changes sign in the mirror and backwards', () => {
    fc.assert(
      fc.property(sitePoint, sitePoint, sitePoint, (one, two, three) => {
        const forth = turn(one, two, three);
        fc.pre(forth !== Math.PI);
        expect(turn(mirrored(one), mirrored(two), mirrored(three))).toBeCloseTo(-forth, 12);
        expect(turn(three, two, one)).toBeCloseTo(-forth, 12);
      }),
    );
  });
});
