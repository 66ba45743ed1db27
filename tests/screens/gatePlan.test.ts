import { describe, expect, it } from 'vitest';
import { gatePlan } from '../../src/screens/plans/gatePlan.ts';
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
