import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { proposedSlide } from '../../../src/screens/plans/proposedSlide.ts';
import { setGateLeaf } from '../../../src/site/edits/setGateLeaf.ts';
import { setGateWay } from '../../../src/site/edits/setGateWay.ts';
import type { LeafId } from '../../../src/site/ids.ts';
import { oneWidth } from '../../../src/site/oneWidth.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { firstGate } from '../../engine/plainYard.ts';
import { onlyGate } from '../../engine/set/setYard.ts';
import { cantilever, swing, wayYard } from '../../engine/wayYard.ts';

const parts = { hinge: 'hardware:hinge', latch: 'hardware:rod' } as const;

const rolling = (leaves: readonly number[]): Site => {
  const site = wayYard(cantilever, leaves.length === 2 ? 2 : 1);
  const ids = Object.keys(onlyGate(site).leaves) as LeafId[];
  return ids.reduce(
    (so, leaf, n) =>
      setGateLeaf(so, firstGate(so), leaf, { widths: oneWidth(inches(leaves[n] ?? 0)) }),
    site,
  );
};

describe('proposedSlide', () => {
  // at least half of what is closed, 4 ft at least: common practice, no published source
  it('proposes for the leaf that is there, and says what opening comes of it', () => {
    const site = rolling([144]);
    const proposal = proposedSlide(site, onlyGate(site));
    expect(proposal?.way).toMatchObject({ counterbalance: 48, overlap: 6, rollers: 42, behind: 6 });
    expect(proposal?.source.text).toContain('common practice');
    if (proposal === null) throw new Error('expected a proposal');
    const taken = setGateWay(site, firstGate(site), proposal.way, parts);
    const layout = layOutSite(taken);
    expect(layout.gates[firstGate(taken)]?.opening.target).toBe(proposal.opening);
    const short = layout.flags.filter(({ rule }) => rule === 'counterbalance too short');
    expect(short).toEqual([]);
    // taken, there is nothing more to propose
    expect(proposedSlide(taken, onlyGate(taken))).toBeNull();
  });

  it('of two leaves goes by the shorter', () => {
    const site = rolling([264, 144]);
    expect(proposedSlide(site, onlyGate(site))).toMatchObject({ leaf: 144 });
  });

  it('has nothing for leaves that turn or are too short to roll', () => {
    const hung = wayYard(swing);
    expect(proposedSlide(hung, onlyGate(hung))).toBeNull();
    const short = rolling([50]);
    expect(proposedSlide(short, onlyGate(short))).toBeNull();
  });
});
