import { describe, expect, it } from 'vitest';
import { drawPlan } from '../../../src/drawing/plan/drawPlan.ts';
import { padPlan } from '../../../src/drawing/plan/padPlan.ts';
import { drawOnPaper } from '../../../src/drawing/drawOnPaper.ts';
import { sampleYards } from '../sampleYards.ts';
import { textsOf } from '../textsOf.ts';

describe('padPlan', () => {
  it.each(sampleYards)('[D28] $name on a pad is led out for gates and flags only', (yard) => {
    const { site, layout } = yard;
    const leaders = (plan: typeof padPlan) => {
      const far = { origin: { x: 0, y: 0 }, scale: 1 / 12_000 };
      return textsOf(drawOnPaper(plan(site, layout), far).atoms).length;
    };
    expect(leaders(padPlan)).toBeLessThan(leaders(drawPlan));
    const waiting = padPlan(site, layout).filter((one) => one.kind === 'text' && !one.far);
    for (const one of waiting)
      expect(one.kind === 'text' && ['gate', 'stop'].includes(one.ink)).toBe(true);
  });
});
