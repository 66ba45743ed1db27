import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { misfit, mountsOf } from '../../../src/screens/plans/misfit.ts';
import { setGateLeaf } from '../../../src/site/edits/setGateLeaf.ts';
import type { GateId, LeafId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { drive, walk, yard } from '../../drawing/orders/signedYard.ts';
import { inventedHinge } from '../../store/invented.ts';

const range = (low: number, high: number) => ({ low: inches(low), high: inches(high) });
const hinge = (post: ReturnType<typeof range> | null, frame: typeof post = null) => ({
  ...inventedHinge('Band hinge'),
  fits: { post, frame },
});
const mounts = { posts: [inches(2.375)], frames: [inches(1.66)] };
const write = (length: number) => `${length} in`;

const mountsIn = (site: Site, gate: GateId, on: LeafId | 'latch') => {
  const layout = layOutSite(site);
  const laid = layout.gates[gate];
  if (laid === undefined) throw new Error('the gate is not laid out');
  return mountsOf(site, layout, laid, on);
};

const leafOf = (gate: GateId): LeafId => Object.keys(yard.gates[gate]?.leaves ?? {})[0] as LeafId;

describe('misfit', () => {
  it('lets pass what fits, and what nobody has said', () => {
    for (const post of [null, range(2.375, 2.375), range(1, 4)]) {
      expect(misfit(hinge(post), mounts, write)).toBeNull();
    }
    expect(misfit(hinge(range(9, 9)), { posts: [], frames: [] }, write)).toBeNull();
  });

  it('tells a part made for other posts or frames in one line', () => {
    expect(misfit(hinge(range(4, 4)), mounts, write)).toBe(
      'Band hinge fits posts of 4 in OD: expected 2.375 in as here',
    );
    expect(misfit(hinge(range(1, 2)), mounts, write)).toContain('posts of 1 in to 2 in OD');
    expect(misfit(hinge(null, range(1.315, 1.315)), mounts, write)).toBe(
      'Band hinge fits frames of 1.315 in OD: expected 1.66 in as here',
    );
  });
});

describe('mountsOf', () => {
  it('a hinge is fixed to the post at its own end, a latch to the other', () => {
    const layout = layOutSite(yard);
    const single = layout.gates[walk];
    const od = (end: 'start' | 'end') => {
      const id = single?.posts?.[end];
      return id === undefined ? undefined : layout.posts[id]?.od;
    };
    const hinged = yard.gates[walk]?.hingedAt ?? 'start';
    const other = hinged === 'start' ? 'end' : 'start';
    expect(od(hinged)).toBeGreaterThan(0);
    expect(mountsIn(yard, walk, leafOf(walk)).posts).toEqual([od(hinged)]);
    expect(mountsIn(yard, walk, 'latch').posts).toEqual([od(other)]);
  });

  it('a latch between two leaves has their frames and no post', () => {
    const frame = { label: '1-5/8', od: inches(1.66), wall: inches(0.14) };
    const said = setGateLeaf(yard, drive, leafOf(drive), { frame });
    expect(mountsIn(said, drive, 'latch')).toEqual({ posts: [], frames: [1.66] });
    expect(mountsIn(said, drive, leafOf(drive)).frames).toEqual([1.66]);
    expect(mountsIn(yard, drive, leafOf(drive)).frames).toEqual([]);
  });
});
