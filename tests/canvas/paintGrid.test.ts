import fc from 'fast-check';
import { expect, it } from 'vitest';
import { rulingFor } from '../../src/canvas/paintGrid.ts';
import { scaleLimits } from '../../src/editor/view.ts';

it('rules feet at the scale of a yard', () => {
  expect(rulingFor(1, 'feet')).toEqual({ fine: 12, heavy: 60 });
  expect(rulingFor(0.5, 'inches')).toEqual({ fine: 60, heavy: 600 });
});

it('rules metres for a metric site', () => {
  const { fine, heavy } = rulingFor(0.5, 'm');
  expect(fine * 0.0254).toBeCloseTo(1, 9);
  expect(heavy * 0.0254).toBeCloseTo(10, 9);
});

it('[N3] never rules lines too close to tell apart, at any scale in reach', () => {
  const scale = fc.double({ min: scaleLimits.least * 3, max: scaleLimits.most, noNaN: true });
  fc.assert(
    fc.property(scale, fc.constantFrom('feet' as const, 'mm' as const), (size, system) => {
      expect(rulingFor(size, system).fine * size).toBeGreaterThanOrEqual(11);
    }),
  );
});
