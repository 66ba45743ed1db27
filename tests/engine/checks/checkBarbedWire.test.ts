import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence } from '../plainYard.ts';

const yard = fence(bare, [
  [0, 0],
  [1200, 0],
]);

const barbed = (fabricHeight: number) =>
  layOutSite(
    changeSpec(yard, 'spec:six', {
      fabricHeight: inches(fabricHeight),
      barbedWire: { strands: 3, arms: 'outward' },
    }),
  ).flags.filter(({ rule }) => rule.startsWith('barbed'));

describe('barbed wire', () => {
  // ASTM F2200 as summarised in operator manuals: 6 ft over grade
  it('[F38] is a caution, and lower than 6 ft over the ground a settle as well', () => {
    expect(barbed(72).map(({ level, rule }) => `${level} ${rule}`)).toEqual([
      'caution barbed wire',
    ]);
    const low = barbed(60);
    expect(low.map(({ level, rule }) => `${level} ${rule}`)).toEqual([
      'settle barbed wire low',
      'caution barbed wire',
    ]);
    // 60 in of fabric over a gap of 2
    expect(low[0]?.message).toMatch(/from 5'-2" over the ground: expected 6'-0" .*F2200/);
    expect(low[1]?.message).toContain('many towns forbid it');
  });

  it('[F38] fence without any says nothing', () => {
    expect(layOutSite(yard).flags.filter(({ rule }) => rule.startsWith('barbed'))).toEqual([]);
  });
});
