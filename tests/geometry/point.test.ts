import { describe, expect, it } from 'vitest';
import { distance } from '../../src/geometry/distance.ts';
import type { PaperPoint, ScreenPoint, SitePoint } from '../../src/geometry/point.ts';

const onGround: SitePoint = { x: 3, y: 4 };
const onPaper: PaperPoint = { x: 0, y: 0 };
const northOf = ({ y }: SitePoint): number => y;

describe('point', () => {
  it('[G1] a plain pair is taken by every space', () => {
    const onScreen: ScreenPoint = { x: 1, y: 2 };
    expect(northOf({ x: 0, y: 7 })).toBe(7);
    expect(onScreen.y).toBe(2);
  });

  it('[G1] the compiler keeps the spaces apart', () => {
    // each comment below fails the type check if the line under it is accepted
    // @ts-expect-error a point on paper is not on the ground
    expect(northOf(onPaper)).toBe(0);
    // @ts-expect-error nor can two spaces be mixed in one construction
    expect(distance(onGround, onPaper)).toBe(5);
  });
});
