import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arcPoints } from '../../src/geometry/arcPoints.ts';
import { bowed } from '../../src/geometry/bowed.ts';
import { distance } from '../../src/geometry/distance.ts';
import { middleOrdinate, ordinateThrough } from '../../src/geometry/middleOrdinate.ts';
import { alongArc, arcBearing, arcLength, onArc } from '../../src/geometry/onArc.ts';

const coordinate = fc.double({ min: -1e5, max: 1e5, noNaN: true });
const point = fc.record({ x: coordinate, y: coordinate });
const arcs = fc
  .tuple(point, point, fc.double({ min: -4, max: 4, noNaN: true }))
  .filter(([a, b, share]) => distance(a, b) > 1 && Math.abs(share) > 0.001)
  .map(([start, end, share]) => {
    const ordinate = share * distance(start, end);
    return { start, end, ordinate, arc: bowed(start, end, ordinate) };
  });

describe('arcs by their chord and middle ordinate', () => {
  it('[G18] 400 ft of radius through 100 degrees: L, C and M of route surveying', () => {
    // circular curve formulas, FM 5-233 Construction Surveying (1985), ch. 3: L = RΔ,
    // C = 2R sin(Δ/2), M = R (1 − cos(Δ/2)); figures worked by hand from them for R = 400 ft, Δ = 100°
    const [radius, delta] = [4800, (100 * Math.PI) / 180];
    const chord = 2 * radius * Math.sin(delta / 2);
    const ordinate = radius * (1 - Math.cos(delta / 2));
    const arc = bowed({ x: 0, y: 0 }, { x: chord, y: 0 }, ordinate);
    expect(chord / 12).toBeCloseTo(612.836, 3);
    expect(ordinate / 12).toBeCloseTo(142.885, 3);
    expect(arc.radius / 12).toBeCloseTo(400, 9);
    expect(arcLength(arc) / 12).toBeCloseTo(698.132, 3);
    expect(middleOrdinate(radius, chord)).toBeCloseTo(ordinate, 6);
  });

  it('[G18] begins, passes its middle and ends where it was told to', () => {
    fc.assert(
      fc.property(arcs, ({ start, end, ordinate, arc }) => {
        const length = arcLength(arc);
        const size = arc.radius + distance(start, end);
        expect(distance(onArc(arc, 0), start) / size).toBeLessThan(1e-9);
        expect(distance(onArc(arc, length), end) / size).toBeLessThan(1e-9);
        const chord = distance(start, end);
        const left = { x: (start.y - end.y) / chord, y: (end.x - start.x) / chord };
        const middle = {
          x: (start.x + end.x) / 2 + ordinate * left.x,
          y: (start.y + end.y) / 2 + ordinate * left.y,
        };
        expect(distance(onArc(arc, length / 2), middle) / size).toBeLessThan(1e-9);
      }),
    );
  });

  it('[G19] through any of its points is the same arc', () => {
    fc.assert(
      fc.property(arcs, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (known, share) => {
        const { start, end, ordinate, arc } = known;
        const via = onArc(arc, share * arcLength(arc));
        const found = ordinateThrough(start, via, end) ?? NaN;
        expect(Math.abs(found - ordinate)).toBeLessThan(1e-5 * (arc.radius + Math.abs(ordinate)));
      }),
    );
    const [a, b, c] = [0, 5, 9].map((x) => ({ x, y: 2 * x }));
    if (a && b && c) expect(ordinateThrough(a, b, c)).toBeNull();
  });

  it('[G19] a radius of less than half the chord has no arc, half of it half a circle', () => {
    expect(middleOrdinate(49, 100)).toBeNull();
    expect(middleOrdinate(50, 100)).toBe(50);
  });

  it('[G20] the nearest point of an arc is no farther than any other', () => {
    fc.assert(
      fc.property(arcs, point, ({ arc }, far) => {
        const length = arcLength(arc);
        const best = distance(onArc(arc, alongArc(arc, far)), far);
        for (let n = 0; n <= 32; n += 1) {
          const other = distance(onArc(arc, (n * length) / 32), far);
          expect(best).toBeLessThanOrEqual(other + 1e-6 * arc.radius);
        }
      }),
    );
  });

  it('[G20] a place along an arc is found again, and it runs square to its radius', () => {
    fc.assert(
      fc.property(arcs, fc.double({ min: 0, max: 1, noNaN: true }), ({ arc }, share) => {
        const along = share * arcLength(arc);
        const at = onArc(arc, along);
        // at its very ends a full circle is at both
        expect(distance(onArc(arc, alongArc(arc, at)), at)).toBeLessThan(1e-6 * arc.radius);
        const way = arcBearing(arc, along);
        const out = Math.atan2(at.y - arc.centre.y, at.x - arc.centre.x);
        expect(Math.abs(Math.cos(way - out))).toBeLessThan(1e-6);
        const next = onArc(arc, along + arc.radius * 1e-3);
        const ahead = (next.x - at.x) * Math.cos(way) + (next.y - at.y) * Math.sin(way);
        expect(ahead).toBeGreaterThan(0);
      }),
    );
  });

  it('[G21] the pieces between its points lie no farther inside than asked', () => {
    fc.assert(
      fc.property(arcs, fc.double({ min: 0.001, max: 5, noNaN: true }), ({ arc }, share) => {
        const off = share * arc.radius * 0.01;
        const points = arcPoints(arc, off);
        points.slice(1).forEach((to, n) => {
          const from = points[n] ?? to;
          const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
          const inside = arc.radius - distance(arc.centre, middle);
          expect(inside).toBeLessThanOrEqual(off + 1e-9 * arc.radius);
        });
      }),
    );
  });
});
