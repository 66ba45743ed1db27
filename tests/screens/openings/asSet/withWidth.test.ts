import { describe, expect, it } from 'vitest';
import { blankAsSet } from '../../../../src/screens/openings/asSet/blankAsSet.ts';
import { withWidth } from '../../../../src/screens/openings/asSet/withWidth.ts';
import { inches } from '../../../../src/units/inches.ts';
import { found } from '../../../engine/set/setYard.ts';

const make = {
  blank: (top: ReturnType<typeof inches>) => blankAsSet({ gates: {} }, top, '2026-11-25'),
  write: (length: number) => `${length}"`,
};
const set = found(119, 118, { remark: 'kept' });

describe('withWidth', () => {
  it('begins a record with the opening at the top, and with no other', () => {
    expect(withWidth(null, ['top', inches(119)], make)).toMatchObject({ top: 119, bottom: null });
    expect(withWidth(null, ['bottom', inches(119)], make)).toBe(
      'Opening at the bottom: expected the one at the top first',
    );
  });

  it('changes that width alone, and the bottom can be taken out again', () => {
    expect(withWidth(set, ['top', inches(120)], make)).toEqual({ ...set, top: 120 });
    expect(withWidth(set, ['bottom', inches(120)], make)).toEqual({ ...set, bottom: 120 });
    expect(withWidth(set, ['bottom', null], make)).toEqual({ ...set, bottom: null });
  });

  it.each([0, -5])('refuses %s with one line that says what was found', (width) => {
    expect(withWidth(set, ['bottom', inches(width)], make)).toBe(
      `Opening at the bottom: expected more than 0, found ${width}"`,
    );
  });

  it('refuses what no yard has, and a top without a width', () => {
    expect(withWidth(set, ['top', inches(1e9)], make)).toMatch(
      /^Opening at the top: .*1000000000"$/,
    );
    expect(withWidth(set, ['top', null], make)).toContain('expected a width, found none');
  });
});
