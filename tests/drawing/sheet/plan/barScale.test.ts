import { describe, expect, it } from 'vitest';
import { barScale } from '../../../../src/drawing/sheet/plan/barScale.ts';
import { textsOf } from '../../textsOf.ts';

const ends = (ratio: number, system: 'feet' | 'm') => {
  const { atoms, width } = barScale(1 / ratio, system);
  return { width, says: textsOf(atoms).map(({ text }) => text) };
};

describe('barScale', () => {
  it('[D23] is as long as it says', () => {
    // 40 ft at 1 in = 20 ft; 20 m at 1 : 400 is 50 mm
    expect(ends(240, 'feet')).toEqual({ width: 2, says: ['0', '20', '40 ft'] });
    const metric = ends(400, 'm');
    expect(metric.says).toEqual(['0', '10', '20 m']);
    expect(metric.width).toBeCloseTo(50 / 25.4, 9);
  });
});
