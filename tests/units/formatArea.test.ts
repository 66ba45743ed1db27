import { describe, expect, it } from 'vitest';
import { formatArea, formatCount } from '../../src/units/formatArea.ts';

describe('formatArea', () => {
  it('[U15] an acre is 43,560 sq ft and 4,046.9 m²', () => {
    // Civil Engineering Formulas, ch. 7: 1 acre = 43,560 sq ft = 4046.87 m²
    expect(formatArea(43_560 * 144)).toBe('43,560 sq ft, 1.000 acres, 4,046.9 m²');
    expect(formatArea(0)).toBe('0 sq ft, 0.000 acres, 0.0 m²');
  });

  it('[U15] thousands are parted by commas', () => {
    expect([999, 1000, 12_116.4, 1_234_567].map(formatCount)).toEqual([
      '999',
      '1,000',
      '12,116',
      '1,234,567',
    ]);
  });
});
