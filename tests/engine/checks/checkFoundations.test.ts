import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import type { FenceSpec } from '../../../src/site/fenceSpec.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence } from '../plainYard.ts';

/** A fence of 50 ft that ends at the wall of a house; its end post is 2.375 in through, its hole 10 in. */
const atHouse = (fields: Partial<FenceSpec>) => {
  const house = addFeature(bare, { kind: 'building', label: '' }, [
    { x: 600, y: -200 },
    { x: 900, y: -200 },
    { x: 900, y: 200 },
    { x: 600, y: 200 },
  ]);
  const site = fence(changeSpec(house, 'spec:six', fields), [
    [0, 0],
    [600, 0],
  ]);
  return layOutSite(site).flags.filter(({ rule }) => rule === 'hole at a foundation');
};

describe('the hole of a post at a wall', () => {
  it('[F26] reaches under the face of its wall where the gap is small: a caution that asks', () => {
    const [flag, ...rest] = atHouse({ wallGap: inches(2) });
    expect(rest).toEqual([]);
    expect(flag?.level).toBe('caution');
    // half of 10 less 2 and half of 2 3/8 is 1 13/16, to the eighth of the yard's tape 1 7/8
    expect(flag?.message).toMatch(/reaches 1 7\/8" under the face of the wall/);
    expect(flag?.message).toMatch(/3 7\/8" off the wall/);
  });

  it('[F26] a foundation that is known to reach out is a settle that says how far to stand off', () => {
    const [flag] = atHouse({ wallGap: inches(4), foundationToe: inches(6) });
    expect(flag?.level).toBe('settle');
    // 5 + 6 - 4 - 1 3/16 = 5 13/16; 4 + 5 13/16
    expect(flag?.message).toMatch(/reaches 5 7\/8" into the foundation .* 9 7\/8" off the wall/);
  });

  it('[F26] a post that stands off enough is no flag', () => {
    expect(atHouse({ wallGap: inches(3.8125) })).toEqual([]);
    expect(atHouse({ wallGap: inches(10), foundationToe: inches(6) })).toEqual([]);
  });
});
