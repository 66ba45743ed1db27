import fc from 'fast-check';
import { expect, it } from 'vitest';
import { settled } from '../../../src/exporters/pdf/settled.ts';

const place = fc.double({ min: -5, max: 60, noNaN: true });

it('[X2] a fraction of an inch is written alike whatever its last bits are', () => {
  const parts = fc.tuple(
    fc.integer({ min: 0, max: 60 * 1024 }),
    fc.constantFrom(64, 1000, 1024, 75, 48),
  );
  fc.assert(
    fc.property(parts, fc.double({ min: -1e-11, max: 1e-11, noNaN: true }), ([n, of], off) => {
      expect(settled(n / of + off)).toBe(settled(n / of));
    }),
  );
});

it('[X70] moves nothing by a thousandth of an inch of ground, at 1 in = 100 ft', () => {
  fc.assert(
    fc.property(place, (inches) => {
      expect(Math.abs(settled(inches) - inches) * 1200).toBeLessThan(0.001);
    }),
  );
});
