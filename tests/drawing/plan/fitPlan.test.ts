import { describe, expect, it } from 'vitest';
import { drawPlan } from '../../../src/drawing/plan/drawPlan.ts';
import { fitPlan } from '../../../src/drawing/plan/fitPlan.ts';
import { sampleYards } from '../sampleYards.ts';

describe('fitPlan', () => {
  it.each(sampleYards)('[D28] $name is fitted by its totals, with no name led out', (yard) => {
    const { site, layout } = yard;
    const chains = fitPlan(site, layout).flatMap((one) =>
      one.kind === 'dimension chain' ? [one] : [],
    );
    const drawn = drawPlan(site, layout).filter(({ kind }) => kind === 'dimension chain');
    expect(chains).toHaveLength(drawn.length);
    for (const chain of chains)
      expect(chain).toMatchObject({ total: null, texts: [expect.stringMatching(/./)] });
    const led = fitPlan(site, layout).filter((one) => one.kind === 'text' && !one.far);
    expect(led).toEqual([]);
  });
});
