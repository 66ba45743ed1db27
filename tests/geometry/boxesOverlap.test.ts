import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxesOverlap } from './boxesOverlap.ts';
import { contains } from '../../src/geometry/contains.ts';
import { corners } from '../../src/geometry/orientedBox.ts';
import { edges } from '../../src/geometry/polygon.ts';
import { segmentIntersection } from '../../src/geometry/segmentIntersection.ts';
import { slack } from '../../src/geometry/tolerance.ts';
import { fromDegrees, radians } from '../../src/units/radians.ts';
import type { OrientedBox } from '../../src/geometry/orientedBox.ts';

const box = (x: number, y: number, degrees: number): OrientedBox<'paper'> => ({
  centre: { x, y },
  halfWidth: 4,
  halfHeight: 1,
  angle: fromDegrees(degrees),
});

/** The same question asked another way: a corner inside the other, or two sides that cross. */
const shareSomething = (a: OrientedBox<'paper'>, b: OrientedBox<'paper'>): boolean => {
  const [onA, onB] = [corners(a), corners(b)];
  return (
    onA.some((point) => contains(onB, point)) ||
    onB.some((point) => contains(onA, point)) ||
    edges(onA).some((one) => edges(onB).some((two) => segmentIntersection(one, two) !== null))
  );
};

const anyBox: fc.Arbitrary<OrientedBox<'paper'>> = fc.record({
  centre: fc.record({
    x: fc.double({ min: 0, max: 10, noNaN: true }),
    y: fc.double({ min: 0, max: 10, noNaN: true }),
  }),
  halfWidth: fc.double({ min: 0.1, max: 4, noNaN: true }),
  halfHeight: fc.double({ min: 0.1, max: 2, noNaN: true }),
  angle: fc.double({ min: -3, max: 3, noNaN: true }).map(radians),
});

describe('boxesOverlap', () => {
  it('[G10] one over the other, and a cross without a corner inside', () => {
    expect(boxesOverlap(box(0, 0, 0), box(3, 1, 0))).toBe(true);
    expect(boxesOverlap(box(0, 0, 0), box(0, 0, 90))).toBe(true);
  });

  it('[G10] touching boxes share no area', () => {
    expect(boxesOverlap(box(0, 0, 0), box(8, 0, 0))).toBe(false);
    expect(boxesOverlap(box(0, 0, 0), box(0, 2, 0))).toBe(false);
    expect(boxesOverlap(box(0, 0, 0), box(0, 1.999, 0))).toBe(true);
    expect(boxesOverlap(box(0, 0, 0), box(0, -2 + slack / 2, 0))).toBe(false);
    expect(boxesOverlap(box(0, 0, 0), box(0, 2 - slack / 2, 0))).toBe(false);
  });

  it('[G10] slanted neighbours whose upright bounds overlap can be apart', () => {
    expect(boxesOverlap(box(0, 0, 45), box(2, -2, 45))).toBe(false);
    expect(boxesOverlap(box(0, 0, 45), box(1, -1, 45))).toBe(true);
  });

  it('[G10] agrees with corners inside and sides crossing, whichever box comes first', () => {
    fc.assert(
      fc.property(anyBox, anyBox, (a, b) => {
        expect(boxesOverlap(a, b)).toBe(shareSomething(a, b));
        expect(boxesOverlap(b, a)).toBe(boxesOverlap(a, b));
      }),
      { numRuns: 300 },
    );
  });
});
