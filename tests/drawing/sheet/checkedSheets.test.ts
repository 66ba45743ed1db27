import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sheetSet } from '../../../src/drawing/sheet/sheetSet.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { randomSite } from '../../engine/randomSite.ts';
import { sampleYards } from '../sampleYards.ts';
import { chainFaults } from './chainFaults.ts';
import { sheetFigures } from './sheetFigures.ts';

/** ISO 3098 begins at 2.5 mm (from memory), which is more than 3/32 in. */
const leastCapitals = 2.5 / 25.4;

const faultless = { overlaps: [], outside: [] };

describe('sheets', { timeout: 120_000 }, () => {
  it.each(sampleYards)(
    '[D111] [D154] of $name have no text over a line, and none is too small',
    ({ site, layout }) => {
      const figures = sheetFigures(sheetSet(site, layout, { paper: 'letter', siteText: '' }));
      expect(figures).toMatchObject(faultless);
      expect(figures.onPlans).toEqual({});
      expect(figures.onOthers).toEqual({});
      expect(figures.leastCapitals).toBeGreaterThanOrEqual(leastCapitals);
    },
  );

  it('[D112] dimension every post and opening once in each tier, and every chain adds up', () => {
    for (const { site, layout } of sampleYards)
      expect(chainFaults(site, layout)).toMatchObject({ posts: [], openings: [], sums: [] });
    fc.assert(
      fc.property(randomSite, (site) => {
        const faults = chainFaults(site, layOutSite(site));
        expect(faults).toMatchObject({ posts: [], openings: [], sums: [] });
      }),
      { numRuns: 20 },
    );
  });

  it('[D113] of any site have no text over another, over a line of a plan, or outside the frame', () => {
    fc.assert(
      fc.property(randomSite, (drawn) => {
        const site = { ...drawn, lengths: { system: 'mm', fraction: 16 } as const };
        const pages = sheetSet(site, layOutSite(site), { paper: 'a3', siteText: '' });
        const figures = sheetFigures(pages);
        expect(figures).toMatchObject(faultless);
        const { sheet: _, ...onLines } = figures.onPlans;
        expect(onLines).toEqual({});
        expect(figures.leastCapitals).toBeGreaterThanOrEqual(leastCapitals);
      }),
      { numRuns: 4 },
    );
  });
});
