import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { leafHangings } from '../../../src/engine/structure/leafHangings.ts';
import { leafLoadTexts } from '../../../src/drawing/tables/leafLoadTexts.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import { setConditions } from '../../../src/site/edits/setConditions.ts';
import { setGatePost } from '../../../src/site/edits/setGatePost.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { oneWidth } from '../../../src/site/oneWidth.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, firstGate, gateOn } from '../plainYard.ts';

const yard = fence(bare, [
  [0, 0],
  [1200, 0],
]);
const walk = gateOn(yard, 0, { from: 'middle', offset: 0 });
const drive = gateOn(yard, 0, { from: 'middle', offset: 0 }, 2);

const hung = (site: typeof walk) => {
  const layout = layOutSite(site);
  const gate = layout.gates[firstGate(site)]!;
  return { layout, gate, all: leafHangings(site, gate, layout.posts) };
};

describe('what leaves do to their posts', () => {
  it('[Z13] a single leaf hangs on its hinged post, about whose axis its weight turns', () => {
    const { gate, layout, all } = hung(walk);
    const [one, ...others] = all;
    expect(others).toEqual([]);
    expect(one?.post).toBe(gate.posts?.start);
    // statics: the weight at the middle of 44 in, from the middle of the post over the pin
    const leaf = gate.leaves[0]!;
    const arm = distance(layout.posts.get(one!.post)!.at, leaf.hinge) + leaf.hung + 22;
    expect(one!.moment).toBeCloseTo(one!.pounds * arm, 6);
  });

  it('[Z13] two leaves hang on a post each; a thicker post gives less', () => {
    const { gate, all } = hung(drive);
    expect(all.map(({ post }) => post)).toEqual([gate.posts?.start, gate.posts?.end]);
    const stout = setGatePost(drive, firstGate(drive), {
      label: '4 schedule 40',
      od: inches(4),
      wall: inches(0.226),
      section: 'round',
    });
    expect(hung(stout).all[0]!.sag).toBeLessThan(all[0]!.sag);
  });

  it('[Z14] a wall told thicker than its pipe is a solid bar, and the layout still answers', () => {
    const bar = { label: 'bar', od: inches(2), wall: inches(5), section: 'round' as const };
    const solid = setGatePost(drive, firstGate(drive), bar);
    const half = setGatePost(drive, firstGate(drive), { ...bar, wall: inches(1) });
    expect(hung(solid).all.map(({ sag }) => sag)).toEqual(hung(half).all.map(({ sag }) => sag));
    const windy = setConditions(changeSpec(solid, 'spec:six', { linePost: bar }), {
      wind: { speed: 120, exposure: 'C' },
      bays: 'by wind',
    });
    expect(layOutSite(windy).flags.length).toBeGreaterThan(0);
  });

  it('[F32] a post that a leaf bends too far is told, and so is a leaf that sags', () => {
    const thin = {
      label: '1-3/8',
      od: inches(1.315),
      wall: inches(0.05),
      section: 'round' as const,
    };
    const weak = setGatePost(drive, firstGate(drive), thin);
    const rules = layOutSite(weak).flags.map(({ rule }) => rule);
    expect(rules).toContain('gate post bends under its leaf');
    expect(rules).toContain('leaf sags at the latch');
    const now = layOutSite(drive).flags.map(({ rule }) => rule);
    expect(now).not.toContain('leaf sags at the latch');
  });

  it('[F32] a hole that is shallow for the moment of its leaf is told, with the ground it was counted in', () => {
    const long = Object.fromEntries(
      Object.entries(walk.gates).map(([id, gate]) => [
        id,
        {
          ...gate,
          leaves: Object.fromEntries(
            Object.entries(gate.leaves).map(([leaf, of]) => [
              leaf,
              { ...of, widths: oneWidth(inches(280)) },
            ]),
          ),
        },
      ]),
    );
    const site = { ...walk, gates: long };
    const told = (so: typeof site) =>
      layOutSite(so).flags.find(({ rule }) => rule === 'gate post hole shallow for its leaf')
        ?.message;
    expect(told(site)).toMatch(/asks for a hole .* deep, 3'-0" planned: .* in 100 psf a foot/);
    expect(told(setConditions(site, { soil: 'bedrock' }))).toBeUndefined();
    expect(told(walk)).toBeUndefined();
    // a weight that stays is no short-term load, of which alone IBC 1806.3.4 lets the ground bear twice as much
    expect(told(setConditions(site, { isolated: true }))).toBe(told(site));
  });

  it('[D83] leaves that are alike are told at once, with what they weigh', () => {
    const { gate, layout } = hung(drive);
    expect(leafLoadTexts(drive, gate, layout)).toEqual([
      expect.stringMatching(
        /^Each leaf on post \w+ and \w+ weighs about \d+ lb \(frame \d+, fabric \d+, fittings \d+\) and bends it by \d+ % /,
      ),
    ]);
    const heavy = changeSpec(drive, 'spec:six', { wire: inches(0.192) });
    expect(hung(heavy).all[0]!.pounds).toBeGreaterThan(hung(drive).all[0]!.pounds);
  });
});
