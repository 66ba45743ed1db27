import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestRadius, meanPosition } from '../../../src/engine/walk/meanPosition.ts';
import { readPosition, type Position } from '../../../src/engine/walk/readPosition.ts';
import { inches } from '../../../src/units/inches.ts';

const at = (latitude: number, longitude: number, radius: number): Position => ({
  latitude,
  longitude,
  radius: inches(radius),
});

const anyReading = fc
  .tuple(
    fc.double({ min: -1e-3, max: 1e-3, noNaN: true }),
    fc.double({ min: -1e-3, max: 1e-3, noNaN: true }),
    fc.double({ min: 0, max: 5000, noNaN: true }),
  )
  .map(([lat, lon, radius]) => at(40 + lat, -90 + lon, radius));

describe('the mean of readings', () => {
  it('[Y2] weighs each by the inverse square of its radius', () => {
    // 200 in against 400 in: weights 4 and 1, so a fifth of the way
    const mean = meanPosition([at(40, -90, 200), at(40.001, -90.001, 400)]);
    expect(mean?.latitude).toBeCloseTo(40.0002, 10);
    expect(mean?.longitude).toBeCloseTo(-90.0002, 10);
    expect(mean?.radius).toBe(200);
  });

  it('[Y2] is told no better than the best of them, nor than 4.9 m', () => {
    const many = Array.from({ length: 100 }, () => at(40, -90, 300));
    expect(meanPosition(many)?.radius).toBe(300);
    expect(meanPosition([at(40, -90, 0)])?.radius).toBe(bestRadius);
    fc.assert(
      fc.property(fc.array(anyReading, { minLength: 1, maxLength: 30 }), (readings) => {
        const radius = meanPosition(readings)?.radius ?? 0;
        expect(radius).toBeGreaterThanOrEqual(4.9 / 0.0254);
        expect(radius).toBeGreaterThanOrEqual(Math.min(...readings.map((one) => one.radius)));
      }),
    );
  });

  it('[Y2] lies among them whatever their order', () => {
    fc.assert(
      fc.property(fc.array(anyReading, { minLength: 1, maxLength: 30 }), (readings) => {
        const [mean, back] = [meanPosition(readings), meanPosition(readings.toReversed())];
        for (const side of ['latitude', 'longitude'] as const) {
          const all = readings.map((one) => one[side]);
          expect(mean?.[side]).toBeGreaterThanOrEqual(Math.min(...all) - 1e-12);
          expect(mean?.[side]).toBeLessThanOrEqual(Math.max(...all) + 1e-12);
          expect(back?.[side]).toBeCloseTo(mean?.[side] ?? NaN, 11);
        }
      }),
    );
  });

  it('[Y2] goes over the date line the short way; there is none of nothing', () => {
    const mean = meanPosition([at(-17, 179.9999, 300), at(-17, -179.9999, 300)]);
    expect(Math.abs(mean?.longitude ?? 0)).toBeCloseTo(180, 9);
    expect(meanPosition([])).toBeNull();
  });
});

describe('a position that a browser tells', () => {
  const told = { latitude: 40, longitude: -90, accuracy: 5 };

  it('[Y3] has its accuracy in inches', () => {
    expect(readPosition(told)).toEqual({
      ok: true,
      value: { latitude: 40, longitude: -90, radius: 5 / 0.0254 },
    });
  });

  it.each([
    [{ latitude: NaN }, 'Latitude NaN: expected degrees from -89 to 89'],
    [{ latitude: 89.5 }, 'Latitude 89.5: expected degrees from -89 to 89'],
    [{ longitude: 181 }, 'Longitude 181: expected degrees from -180 to 180'],
    [{ accuracy: -1 }, 'Accuracy -1: expected metres'],
    [{ accuracy: Infinity }, 'Accuracy Infinity: expected metres'],
  ])('[Y3] that cannot be is told in one line: %o', (change, reason) => {
    expect(readPosition({ ...told, ...change })).toEqual({ ok: false, reason });
  });
});
