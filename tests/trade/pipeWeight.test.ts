import { describe, expect, it } from 'vitest';
import { fencePipes } from '../../src/trade/pipes.ts';
import { pipeWeight } from '../../src/trade/pipeWeight.ts';
import { inches } from '../../src/units/inches.ts';

describe('pipeWeight', () => {
  it('[T3] agrees with every weight of the table within 0.5 %', () => {
    const off = fencePipes.map(({ label, od, wall, poundsPerFoot }) => ({
      label,
      share: Math.abs(pipeWeight(od, wall) / poundsPerFoot - 1),
    }));
    expect(off.filter(({ share }) => share > 0.005)).toEqual([]);
  });

  it('[T3] is the volume of the ring times the weight of steel', () => {
    // 0.2836 lb per cubic inch, from memory
    const [od, wall] = [inches(4), inches(0.226)];
    const ring = (Math.PI / 4) * (od ** 2 - (od - 2 * wall) ** 2);
    expect(pipeWeight(od, wall)).toBeCloseTo(ring * 12 * 0.2836, 2);
  });

  it('[T3] gives the 9.1 lb/ft that a building specification asks of a 4 in gate post', () => {
    // government building specification, section 12-03
    expect(pipeWeight(inches(4), inches(0.226))).toBeCloseTo(9.1, 1);
  });
});
