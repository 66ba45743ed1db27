import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groundOf } from '../../../src/engine/ground/groundOf.ts';
import { heightAt } from '../../../src/engine/ground/heightAt.ts';
import { plane, shotsOn, yard } from './shotsOn.ts';

const grade = fc.integer({ min: -500, max: 500 }).map((n) => n / 1000);
const coordinate = fc.integer({ min: -2999, max: 2999 });
const place = fc.record({ x: coordinate, y: coordinate });

describe('groundOf', () => {
  it('[R1] shots on a plane give its height everywhere between them', () => {
    fc.assert(
      fc.property(fc.nat(), grade, grade, place, (seed, east, north, { x, y }) => {
        const surface = plane(37, east, north);
        const ground = groundOf(shotsOn(yard(seed, 30), surface));
        expect(heightAt(ground, { x, y })).toBeCloseTo(surface({ x, y }), 8);
        expect(heightAt(ground, { x: x + 6000, y })).toBeNull();
      }),
    );
  });

  it('[R1] fewer than three shots, or all on one line, are no ground', () => {
    const line = shotsOn(
      [-1, 0, 1].map((x) => ({ x: x * 100, y: 5 })),
      () => 3,
    );
    expect(heightAt(groundOf(line), { x: 0, y: 5 })).toBeNull();
    expect(heightAt(groundOf([]), { x: 0, y: 0 })).toBeNull();
  });

  it('[R2] of two shots on one spot the first counts and the other is told of', () => {
    const shots = [
      ...shotsOn(yard(1, 0), () => 10),
      { id: 'a', x: 100, y: 0, z: 12 },
      { id: 'b', x: 100, y: 0.01, z: 11.5 },
      { id: 'c', x: 100, y: 0, z: 12 },
    ];
    const ground = groundOf(shots);
    expect(ground.clashes).toEqual([
      { counts: 'a', other: 'b', at: { x: 100, y: 0 }, higher: -0.5 },
    ]);
    expect(heightAt(ground, { x: 100, y: 0 })).toBe(12);
  });
});
