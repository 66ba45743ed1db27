import { describe, expect, it } from 'vitest';
import { baySpacings } from '../../src/trade/baySpacings.ts';
import { maxSpacing } from '../../src/trade/spacing.ts';

describe('baySpacings', () => {
  it('lists what is published, shortest first, the usual one among them', () => {
    const lengths = baySpacings.map(({ length }) => length);
    expect(lengths).toEqual(lengths.toSorted((a, b) => a - b));
    // ASTM F567-07 4.1: 10 ft; LA County Code Title 26 §6605.2.3: 12 ft; BS 1722 class: 3 m
    expect(lengths.map((length) => Math.round(length * 25.4))).toEqual([3000, 3048, 3658]);
    expect(baySpacings).toContain(maxSpacing);
  });
});
