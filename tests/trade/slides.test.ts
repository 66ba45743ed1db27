import { describe, expect, it } from 'vitest';
import { counterbalanceFor, slideFor, widestSlide } from '../../src/trade/slides.ts';
import { rollerPost } from '../../src/trade/gateStands.ts';
import { inches } from '../../src/units/inches.ts';

describe('leaves that roll', () => {
  // at least half the opening, at least 4 ft: common practice, no published source
  it('[T13] counterbalance is half of what is closed, and 4 ft at least', () => {
    expect([60, 96, 97, 240].map((closes) => counterbalanceFor(inches(closes)))).toEqual([
      48, 48, 48.5, 120,
    ]);
  });

  // a leaf of about 1.5 times the opening: MIL-HDBK-1013/10 3.4.1.2, published
  it('[T13] a proposed slide is on both rollers when closed, and half as long again as what it closes', () => {
    for (const closes of [144, 240, 360]) {
      const { overlap, counterbalance, rollers } = slideFor(inches(closes));
      expect(rollers).toBeLessThan(overlap + counterbalance);
      const leaf = closes + overlap + counterbalance;
      expect(leaf / closes).toBeGreaterThanOrEqual(1.5);
      expect(leaf / closes).toBeLessThan(1.6);
    }
  });

  // about 32 ft; posts of 4.000 in OD: common practice, no published source
  it('[T13] says how long leaves are at most and what their rollers stand on', () => {
    expect(widestSlide.each).toBe(12 * 32);
    expect(rollerPost.post.od).toBe(4);
  });
});
