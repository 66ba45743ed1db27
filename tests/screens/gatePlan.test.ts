import { describe, expect, it } from 'vitest';
import { gatePlan, usualParts } from '../../src/screens/plans/gatePlan.ts';
import { genericBook } from '../../src/screens/plans/genericBook.ts';
import { offeredParts } from '../../src/screens/plans/offeredParts.ts';
import { withParts } from '../../src/screens/plans/withParts.ts';
import { inches } from '../../src/units/inches.ts';
import { standardGates } from '../../src/trade/standardGates.ts';

describe('a planned gate', () => {
  it('has leaves that, with hinges and latch, make no more than the opening, and less than a step less', () => {
    for (const { leaves, opening } of standardGates) {
      const plan = gatePlan(leaves, opening);
      const sum = plan.leaves.reduce<number>(
        (so, { width, hinge }) => so + width + hinge.hardware.takes.planned,
        plan.latch.hardware.takes.planned,
      );
      expect(plan.leaves).toHaveLength(leaves);
      expect(sum).toBeLessThanOrEqual(opening);
      expect(sum).toBeGreaterThan(opening - 0.125 * leaves);
    }
  });

  it('takes heavy hinges and a post of its own where a leaf is over 6 ft', () => {
    const wide = gatePlan(2, inches(288));
    expect(wide.leaves[0]?.hinge.hardware.label).toMatch(/heavy/i);
    expect(wide.post?.od).toBe(4);
    expect(gatePlan(1, inches(48)).post).toBeNull();
  });
});

describe('the book behind a planned gate', () => {
  const usual = usualParts(1, inches(48), genericBook);
  const measured = {
    ...usual.hinge.hardware,
    takes: { low: inches(2), planned: inches(2.125), high: inches(2.125) },
    from: 'measured',
  } as const;

  it('gives the figures that the company has measured, and the leaf that follows from them', () => {
    const parts = usualParts(1, inches(48), { [usual.hinge.id]: measured });
    const plan = gatePlan(1, inches(48), parts);
    // measured in the shop, not for this site
    const taken = { ...measured, from: 'book' };
    expect(plan.leaves[0]?.hinge).toEqual({ id: usual.hinge.id, hardware: taken });
    // 48 - 2-1/8 - 1-7/8 in
    expect(plan.leaves[0]?.width).toBe(44);
    // a latch that was taken out of the book is still assumed
    expect(parts.latch.hardware.from).toBe('assumed');
  });

  it('works catalogue leaves out anew for another hinge, and leaves measured ones alone', () => {
    const plan = gatePlan(1, inches(48));
    const parts = { hinge: { id: usual.hinge.id, hardware: measured }, latch: usual.latch };
    expect(withParts(plan, parts).leaves[0]?.width).toBe(44);
    const [leaf] = plan.leaves;
    if (leaf === undefined) throw new Error('expected a leaf');
    const own = { ...plan, leaves: [{ ...leaf, width: inches(43), from: 'measured' as const }] };
    const changed = withParts(own, parts);
    expect(changed.leaves[0]).toEqual({ ...own.leaves[0], hinge: parts.hinge });
  });

  it('is offered beside what a site carries, which keeps its own figures', () => {
    const site = { hardware: { [usual.hinge.id]: measured } };
    const offered = offeredParts(site, genericBook, ['hinge']);
    expect(offered[0]).toEqual({ id: usual.hinge.id, hardware: measured });
    const hinges = Object.values(genericBook).filter(({ kind }) => kind === 'hinge');
    expect(offered).toHaveLength(hinges.length);
    expect(offered.every(({ hardware }) => hardware.kind === 'hinge')).toBe(true);
  });
});
