import { describe, expect, it } from 'vitest';
import { holeFor } from '../../../src/engine/posts/holeFor.ts';
import { holeVolume } from '../../../src/engine/structure/holeVolume.ts';
import { inches, type Inches } from '../../../src/units/inches.ts';

const hole = (od: number, height: number, leaf: number | null = null) => {
  const width: Inches | null = leaf === null ? null : inches(leaf);
  const post = { od: inches(od), section: 'round' as const };
  return holeFor({ post, fabricHeight: inches(height), leaf: width, wall: null });
};

describe('holeFor', () => {
  // depths by ASTM F567-07 5.1, derived: 24 in, and 3 in more for each foot over 4 ft
  it.each([
    [36, 24],
    [48, 24],
    [60, 27],
    [72, 30],
    [96, 36],
    [120, 42],
    [144, 48],
  ])('[P13] a fence of %d in takes holes %d in deep', (height, depth) => {
    expect(hole(1.9, height).depth).toBe(depth);
  });

  // four times the post up to 4 in, three times above (ASTM F567-07 5.1), to the next auger
  it.each([
    [1.66, 8],
    [1.9, 8],
    [2.375, 10],
    [2.875, 12],
    [4, 16],
    [6.625, 24],
  ])('[P13] a post of %d in takes a hole of %d in', (od, diameter) => {
    expect(hole(od, 72)).toMatchObject({ diameter, source: 'ASTM F567-07 5.1' });
  });

  // MIL-HDBK-1013/10 (14 May 1993), Table 1: leaf in feet, post, footing
  it.each([
    [4, 2.875, 18],
    [6, 2.875, 18],
    [12, 4, 24],
    [18, 6.625, 36],
    [24, 8.625, 40],
  ])('[P13] a leaf of %d ft on a %d in post takes a footing of %d in', (feet, od, footing) => {
    const { diameter, depth, source } = hole(od, 72, feet * 12);
    expect([diameter, depth]).toEqual([footing, 36]);
    expect(source).toContain('MIL-HDBK-1013/10');
  });

  // three times the side, to the next auger: common practice, no published source
  it.each([
    [2.5, 8],
    [3.5, 12],
    [5.5, 18],
  ])('[P27] a square post of %d in takes a hole of %d in, as deep as any other', (od, diameter) => {
    const post = { od: inches(od), section: 'square' as const };
    const found = holeFor({ post, fabricHeight: inches(72), leaf: null, wall: null });
    expect(found).toMatchObject({ diameter, depth: 30 });
    expect(found.source).toContain('no published source');
    // in a wall the core is the circle through its corners and the room round it
    const set = { kind: 'cored', depth: inches(12), room: inches(2) } as const;
    const wall = {
      width: inches(12),
      height: inches(18),
      toe: null,
      rise: inches(0),
      steps: 0,
      set,
    };
    const core = holeFor({ post, fabricHeight: inches(72), leaf: null, wall: wall as never });
    expect(core.diameter).toBeCloseTo(od * Math.SQRT2 + 2, 9);
  });

  it('[P27] concrete is what a square post leaves of its hole', () => {
    const bore = { diameter: inches(12), depth: inches(30) };
    const post = { od: inches(3.5), section: 'square' as const };
    expect(holeVolume(bore, post)).toBeCloseTo((Math.PI * 36 - 12.25) * 30, 6);
    expect(holeVolume(bore, null)).toBeCloseTo(Math.PI * 36 * 30, 6);
    expect(holeVolume({ ...bore, diameter: inches(3.5) }, post)).toBe(0);
  });

  it('[P13] a gate post takes the deeper of the two rules', () => {
    expect(hole(2.875, 144, 48)).toMatchObject({ diameter: 18, depth: 48 });
  });

  it('[P13] a leaf wider than the table takes the rule alone', () => {
    expect(hole(8.625, 72, 25 * 12)).toMatchObject({ diameter: 26, depth: 30 });
  });
});
