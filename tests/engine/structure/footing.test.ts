import { describe, expect, it } from 'vitest';
import { footing, type FootingDemand } from '../../../src/engine/structure/footing.ts';
import { inches } from '../../../src/units/inches.ts';

const demand: FootingDemand = {
  od: inches(2.375),
  fabricHeight: inches(72),
  leaf: null,
  into: 'soil',
  frost: null,
  pole: null,
};

describe('a footing by every rule', () => {
  it.each([
    // ASTM F567-07 5.1: 24 in and 3 in more for each foot over 4 ft; 4 times the post up to 4 in, 3 times above
    [1.66, 48, 8, 24],
    [1.9, 60, 8, 27],
    [2.375, 72, 10, 30],
    [2.875, 96, 12, 36],
    [4, 120, 16, 42],
    [6.625, 144, 24, 48],
  ])(
    '[Z12] a post of %f in and fabric of %i in: %i in across, %i in deep',
    (od, height, across, deep) => {
      const found = footing({ ...demand, od: inches(od), fabricHeight: inches(height) });
      expect([found.diameter, found.depth]).toEqual([across, deep]);
    },
  );

  it('[Z12] the largest that any rule asks for counts, each with its source', () => {
    const found = footing({ ...demand, leaf: inches(66), frost: inches(40) });
    // MIL-HDBK-1013/10 Table 1: 18 in across for leaves up to 6 ft; 40 in of frost and 6 in
    expect([found.diameter, found.depth]).toEqual([18, 46]);
    expect(found.rows.map(({ rule }) => rule)).toEqual(['hole', 'gate post', 'frost']);
    expect(found.rows.every(({ source }) => source !== '')).toBe(true);
  });

  it('[Z12] the pole formula is worked on the hole that the rules give', () => {
    const pole = {
      push: { pounds: 130, height: inches(36) },
      lateral: 150,
      held: 'by nothing',
    } as const;
    const found = footing({ ...demand, pole });
    // 3.71 ft on 10 in, derived by hand
    expect((found.depth ?? 0) / 12).toBeCloseTo(3.71, 1);
    const paved = footing({ ...demand, pole: { ...pole, held: 'by paving' } });
    expect(paved.depth!).toBeLessThan(found.depth!);
  });

  it('[Z12] where the formula finds no depth there is none, and no concrete', () => {
    const push = { pounds: 90_000, height: inches(36) };
    const found = footing({ ...demand, pole: { push, lateral: 100, held: 'by nothing' } });
    expect([found.depth, found.concrete]).toEqual([null, null]);
  });

  it('[Z12] in rock it is a core an inch wider than the post and 12 in deep', () => {
    // MIL-HDBK-1013/10, glossary
    const found = footing({ ...demand, into: 'rock', frost: inches(40) });
    expect([found.diameter, found.depth]).toEqual([3.375, 12]);
  });

  it('[Z12] concrete is the hole without the post', () => {
    const { concrete } = footing(demand);
    // cylinders of 10 in and 2.375 in, 30 in deep
    expect(concrete).toBeCloseTo(Math.PI * 30 * (5 ** 2 - 1.1875 ** 2), 6);
  });
});
