import { describe, expect, it } from 'vitest';
import { fitsOf } from '../../../src/engine/checks/fitsOf.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { changeGate } from '../../../src/site/edits/changeGate.ts';
import { setGateLeaf } from '../../../src/site/edits/setGateLeaf.ts';
import { setGatePost } from '../../../src/site/edits/setGatePost.ts';
import type { Hardware } from '../../../src/site/hardware.ts';
import { roundPost } from '../../../src/site/roundPost.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { firstGate } from '../plainYard.ts';
import { cantilever, gap, wayYard } from '../wayYard.ts';
import { gateOf, leafIds, partOf } from '../set/setYard.ts';

type Ends = readonly [number, number];
const fits = (post: Ends | null, frame: Ends | null): Partial<Hardware> => {
  const range = (ends: Ends | null) =>
    ends === null ? null : { low: inches(ends[0]), high: inches(ends[1]) };
  return { fits: { post: range(post), frame: range(frame) } };
};
const pipe = (od: number) => ({ label: `${od}`, od: inches(od), wall: inches(0.1) });
const post = (od: number) => roundPost(pipe(od));

/** The gate posts of the plain yard are of 2.875 in. */
const single = (hinge: Partial<Hardware>, latch: Partial<Hardware>): Site =>
  gateOf([44], {
    hinge: partOf('hinge', [1.75, 2, 2], { label: 'Strap hinge', ...hinge }),
    latch: partOf('latch', [1.75, 2, 2.25], { label: 'Fork', ...latch }),
  });
const framed = (site: Site, od: number): Site =>
  leafIds(site).reduce(
    (so, leaf) => setGateLeaf(so, firstGate(so), leaf, { frame: pipe(od) }),
    site,
  );

const rows = (site: Site) => {
  const layout = layOutSite(site);
  const laid = layout.gates[firstGate(site)];
  if (laid === undefined) throw new Error('no gate');
  return fitsOf(site, layout, laid);
};
const flagged = (site: Site) =>
  layOutSite(site).flags.filter(({ rule }) => rule === 'part does not fit');

describe('what a part is made for against what it is fixed to', () => {
  it('[F11] is told of every post and frame, and is not known where nobody has said', () => {
    const site = single(fits([2.375, 2.875], null), fits(null, [1.375, 1.66]));
    expect(
      rows(site).map(({ role, against, on, od, fits: fit }) => [role, against, on, od, fit]),
    ).toEqual([
      ['hinge', 'post', 'the hinge post', 2.875, true],
      ['hinge', 'frame', 'the frame of the leaf', null, null],
      ['latch', 'post', 'the latch post', 2.875, null],
      ['latch', 'frame', 'the frame of the leaf', null, null],
    ]);
    expect(flagged(site)).toEqual([]);
    const known = framed(site, 1.66);
    expect(rows(known).map(({ fits: fit }) => fit)).toEqual([true, null, null, true]);
    expect(flagged(known)).toEqual([]);
  });

  it('[F11] a hinge for other posts is a flag that names it, its range and the actual diameter', () => {
    const site = single(fits([1.9, 2.375], null), {});
    const [flag, ...rest] = flagged(site);
    expect(rest).toEqual([]);
    expect(flag).toMatchObject({ level: 'settle', place: { kind: 'gate' } });
    expect(flag?.message).toContain('hinge “Strap hinge” fits posts of 1.900" to 2.375" OD');
    expect(flag?.message).toContain('the hinge post is 2.875"');
    // the post is what counts, not what the hinge was bought for
    expect(flagged(setGatePost(site, firstGate(site), post(2.375)))).toEqual([]);
  });

  it('[F11] a trade name is no diameter: pipe called 2-1/2 is 2.375', () => {
    // pipe that the trade calls 2-1/2 is 2.375 in across (trade/pipes.ts, with its source)
    const site = single(fits([2.5, 2.5], null), {});
    const posts = setGatePost(site, firstGate(site), { ...post(2.375), label: '2-1/2' });
    expect(flagged(posts).length).toBe(1);
  });

  it('[F11] of two leaves the latch meets both frames and no post, and each hinge its own', () => {
    const site = gateOf([56.25, 56.25], {
      hinge: partOf('hinge', [2, 2, 2], fits([2.875, 2.875], [1.9, 1.9])),
      latch: partOf('drop rod', [2, 2, 2.5], fits([1, 1], [1.66, 1.66])),
    });
    const [first] = leafIds(site);
    const half = setGateLeaf(site, firstGate(site), first ?? 'leaf:', { frame: pipe(1.66) });
    expect(rows(half).map(({ role, on, fits: fit }) => [role, on, fit])).toEqual([
      ['hinge', 'the post of leaf 1', true],
      ['hinge', 'the frame of leaf 1', false],
      ['hinge', 'the post of leaf 2', true],
      ['hinge', 'the frame of leaf 2', null],
      ['latch', 'the frame of leaf 1', true],
      ['latch', 'the frame of leaf 2', null],
    ]);
  });

  it('[F11] a closer is fixed to post and frame; a leaf that rolls has no hinge; a gap has nothing', () => {
    const site = single({}, {});
    const closer = partOf('closer', [0, 0, 0], fits([4, 4], null));
    const parts = { ...site, hardware: { ...site.hardware, 'hardware:closer': closer } };
    const closed = changeGate(parts, firstGate(parts), { closer: 'hardware:closer' });
    expect(rows(closed).filter(({ role }) => role === 'closer')).toMatchObject([
      { on: 'the hinge post', fits: false },
      { on: 'the frame of the leaf', fits: null },
    ]);
    // it stores at the start, so the latch is at the other end
    expect(rows(wayYard(cantilever)).map(({ role, on }) => [role, on])).toEqual([
      ['latch', 'the latch post'],
      ['latch', 'the frame of the leaf'],
    ]);
    expect(rows(wayYard(gap))).toEqual([]);
  });
});
