import { describe, expect, it } from 'vitest';
import { atomBounds } from '../../../src/drawing/detail/atomBounds.ts';
import { smallPlan, smallPlanSize } from '../../../src/drawing/plan/smallPlan.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { addMark } from '../../../src/site/edits/addMark.ts';
import { emptySite } from '../../../src/site/emptySite.ts';
import { sampleYards } from '../sampleYards.ts';

const empty = emptySite({ specs: {}, hardware: {} });

describe('the small plan of a list', () => {
  it('shows the marks of every sample yard on its paper, without letters', () => {
    const { width, height } = smallPlanSize;
    for (const { site, name } of sampleYards) {
      const small = smallPlan(site, layOutSite(site));
      const bounds = small === null ? null : atomBounds(small.atoms);
      if (small === null || bounds === null) throw new Error(`${name}: nothing is drawn`);
      expect(small.atoms.some((atom) => atom.do === 'text')).toBe(false);
      // it fills one way at least and is in the middle
      const [wide, high] = [bounds.maxX - bounds.minX, bounds.maxY - bounds.minY];
      expect(Math.max(wide / width, high / height), name).toBeGreaterThan(0.6);
      expect(bounds.minX, name).toBeLessThan(width / 2);
      expect(bounds.maxX, name).toBeGreaterThan(width / 2);
    }
  });

  it('is none of an empty yard, and one of a single mark', () => {
    expect(smallPlan(empty, layOutSite(empty))).toBeNull();
    const one = addMark(empty, { x: 5000, y: -7000 } as never);
    expect(smallPlan(one, layOutSite(one))).not.toBeNull();
  });
});
