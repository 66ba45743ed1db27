import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fittingScale, scalesOf } from '../../../src/drawing/sheet/scales.ts';

const ratioOf = (system: 'feet' | 'mm', text: string): number | undefined =>
  scalesOf(system).find((scale) => scale.text === text)?.ratio;

describe('scales', () => {
  it('[D5] have the published factors: 1 in = 20 ft is 240, 1/4 in = 1 ft is 48', () => {
    // engineer's and architect's scale factors, Elephant Engineering, "Drawing scale"
    expect(ratioOf('feet', '1 in = 20 ft')).toBe(240);
    expect(ratioOf('feet', '1/4 in = 1 ft')).toBe(48);
    // 1/16 in = 1 ft from memory: 12 / (1/16)
    expect(ratioOf('feet', '1/16 in = 1 ft')).toBe(192);
    expect(ratioOf('mm', '1 : 200')).toBe(200);
  });

  it.each(['feet', 'mm'] as const)('[D5] of %s go from the largest drawing down', (system) => {
    const ratios = scalesOf(system).map(({ ratio }) => ratio);
    expect(ratios).toEqual([...ratios].sort((a, b) => a - b));
    expect(new Set(ratios).size).toBe(ratios.length);
  });
});

describe('fittingScale', () => {
  const side = fc.double({ min: 1, max: 60_000, noNaN: true });

  it('[D5] fits, and the next larger one would not', () => {
    fc.assert(
      fc.property(side, side, (width, height) => {
        const scales = scalesOf('feet');
        const room = { width: 10, height: 6 };
        const { ratio } = fittingScale(scales, { width, height }, room);
        expect(width / ratio).toBeLessThanOrEqual(10);
        expect(height / ratio).toBeLessThanOrEqual(6);
        const larger = scales.filter((scale) => scale.ratio < ratio).at(-1);
        if (larger === undefined) return;
        expect(width / larger.ratio > 10 || height / larger.ratio > 6).toBe(true);
      }),
    );
  });

  it('takes the smallest scale for ground that no scale fits', () => {
    const huge = { width: 1e9, height: 1 };
    expect(fittingScale(scalesOf('feet'), huge, { width: 10, height: 6 }).ratio).toBe(72_000);
  });
});
