import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  counterbalanceFor,
  overhangFor,
  slideFor,
  slideOfLeaf,
  widestSlide,
} from '../../src/trade/slides.ts';
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

  it('[T13] the slide of a leaf that is there closes what is left of it', () => {
    fc.assert(
      fc.property(fc.double({ min: 55.5, max: 600, noNaN: true }), (leaf) => {
        const slide = slideOfLeaf(inches(leaf));
        if (slide === null) throw new Error('expected a slide');
        const closes = leaf - slide.overlap - slide.counterbalance;
        expect(closes).toBeGreaterThan(0);
        const over = slide.counterbalance - counterbalanceFor(inches(closes));
        expect(over).toBeGreaterThan(-1e-9);
        // up to the next half inch, which closes so much less
        expect(over).toBeLessThan(0.75);
        expect(Number.isInteger(slide.counterbalance * 2)).toBe(true);
      }),
    );
    // 22 ft of leaf: 264 less 6 is one and a half times 172
    expect(slideOfLeaf(inches(264))?.counterbalance).toBe(86);
    // 4 ft of counterbalance and 6 in of overlap are all there is
    expect(slideOfLeaf(inches(54))).toBeNull();
  });

  // ASTM F1184 Class 2, from memory: openings 6 to 10, 11 to 14, 15 to 22 and 23 to 30 ft
  it('[T13] the table of overhangs by the opening, and where it ends', () => {
    const feet = [6, 10, 11, 14, 15, 22, 23, 30, 30.01];
    expect(feet.map((opening) => overhangFor(inches(12 * opening)))).toEqual([
      78,
      78,
      90,
      90,
      120,
      120,
      144,
      144,
      null,
    ]);
  });

  // about 32 ft; posts of 4.000 in OD: common practice, no published source
  it('[T13] says how long leaves are at most and what their rollers stand on', () => {
    expect(widestSlide.each).toBe(12 * 32);
    expect(rollerPost.post.od).toBe(4);
  });
});
