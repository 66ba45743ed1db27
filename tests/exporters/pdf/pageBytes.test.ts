import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PageBytes } from '../../../src/exporters/pdf/pageBytes.ts';

const written = (write: (out: PageBytes) => void): string => {
  const out = new PageBytes();
  write(out);
  return Buffer.from(out.written()).toString('latin1');
};

const byRule = (value: number): string => `${value.toFixed(5).replace(/0+$/, '')} `;

describe('the bytes of a page', () => {
  it('have numbers to five places as they are rounded by rule, also halfway between two', () => {
    const halfway = fc.integer({ min: -1e9, max: 1e9 }).map((n) => (n + 0.5) / 1e5);
    const some = fc.oneof(
      fc.double({ min: -20000, max: 20000, noNaN: true }),
      fc.double({ min: -1, max: 1, noNaN: true }),
      fc.double({ min: -1e12, max: 1e12, noNaN: true }),
      halfway,
    );
    fc.assert(
      fc.property(some, (value) => {
        expect(written((out) => out.number(value))).toBe(byRule(value));
      }),
      { numRuns: 2000 },
    );
  });

  it.each([0, -0, 72, 40.32, 0.00001, -0.000001, 0.000005, 1.000005, 99999.999999])(
    'write %d as the rule has it',
    (value) => {
      expect(written((out) => out.number(value))).toBe(byRule(value));
    },
  );

  it('refuse what is no number', () => {
    expect(() => written((out) => out.number(Number.NaN))).toThrow(/expected a number/);
  });

  it('keep what was written when they grow', () => {
    const line = 'q 1. 0. 0. 1. 0. 0. cm\n';
    const all = written((out) => {
      for (let n = 0; n < 10_000; n += 1) out.text(line);
    });
    expect(all).toBe(line.repeat(10_000));
  });
});
