import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Conditions } from '../../../src/site/conditions.ts';
import { setConditions } from '../../../src/site/edits/setConditions.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { setGatePost } from '../../../src/site/edits/setGatePost.ts';
import { setGateHinged } from '../../../src/site/edits/setGateHinged.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import type { FenceSpec } from '../../../src/site/fenceSpec.ts';
import type { GateId, SpecId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { isCompared } from '../../../src/engine/structure/windOnPost.ts';
import { postStructures } from '../../../src/engine/structure/postStructures.ts';
import { mended as mendSite } from '../../../src/engine/mend.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, firstGate, gateOn } from '../plainYard.ts';

const fenceSite = fence(bare, [
  [0, 0],
  [1200, 0],
]);

const windy: Conditions['wind'] = { speed: 150, exposure: 'C' };

const withBuild = (site: Site, fields: Partial<FenceSpec>): Site =>
  (Object.keys(site.specs) as SpecId[]).reduce((so, id) => changeSpec(so, id, fields), site);

const said = (site: Site): readonly (readonly [string, string])[] =>
  layOutSite(site).flags.flatMap(({ rule, message }) =>
    /wind|frost|solid/.test(rule) ? [[rule, message] as const] : [],
  );

describe('what wind, frost and ground ask of line posts', () => {
  it('[F30] nothing is said where nobody has told of any of it', () => {
    expect(said(fenceSite)).toEqual([]);
  });

  it('[F30] posts that bend by more than they may bear are a settle, with the bay that would do', () => {
    const site = setConditions(fenceSite, { wind: windy });
    const found = new Map(said(site));
    expect([...found.keys()]).toEqual(['holes shallow for the wind', 'posts bend in the wind']);
    const message = found.get('posts bend in the wind');
    expect(message).toMatch(/10'-0" apart bend by \d{3} % .*; expected bays of \d+'-.* at most/);
    expect(message).toContain('from memory');
    expect(found.get('holes shallow for the wind')).toMatch(
      /pole formula in 100 psf a foot line post holes 2'-6" deep, asked \d'-.*\(IBC 1807\.3\.2\.1\)/,
    );
  });

  it('[F30] turned on, bays are no longer than that, and the flag is gone', () => {
    const site = setConditions(fenceSite, { wind: windy, bays: 'by wind' });
    expect(said(site).map(([rule]) => rule)).not.toContain('posts bend in the wind');
    const before = layOutSite(fenceSite).posts.size;
    expect(layOutSite(site).posts.size).toBeGreaterThan(before);
  });

  it('[F30] holes above frost are a settle until the build asks for deeper ones', () => {
    const site = setConditions(fenceSite, { frost: inches(36) });
    expect(said(site)).toEqual([
      ['holes above frost', expect.stringMatching(/holes 2'-6" deep; frost asks for 3'-6"/)],
    ]);
    const deep = withBuild(site, { leastDepth: inches(42) });
    expect(said(deep)).toEqual([]);
    const depths = [...layOutSite(deep).posts.values()].map(({ hole }) => hole.depth);
    expect(Math.min(...depths)).toBe(42);
  });

  it('[F30] said once for a build, at its first line, with each use whose holes are shallow', () => {
    const two = fence(fenceSite, [
      [0, 2400],
      [1200, 2400],
    ]);
    const { flags } = layOutSite(setConditions(two, { wind: windy }));
    const shallow = flags.filter(({ rule }) => rule === 'holes shallow for the wind');
    expect(shallow.map(({ place }) => place.id)).toEqual(['line:1']);
    expect(shallow[0]?.message).toMatch(/line post holes .*; terminal post holes /);
    const { mend } = shallow[0]!;
    const mended = mendSite(setConditions(two, { wind: windy }), mend!);
    expect(said(mended).map(([rule]) => rule)).toEqual(['posts bend in the wind']);
  });

  it('[F30] a thin terminal that holds fence on both sides is told, by its tag', () => {
    const thin = {
      label: 'thin',
      od: inches(1.315),
      wall: inches(0.065),
      section: 'round' as const,
    };
    const turned = fence(bare, [
      [0, 0],
      [1200, 0],
      [1200, 1200],
    ]);
    const site = withBuild(setConditions(turned, { wind: windy }), { terminalPost: thin });
    const found = new Map(said(site));
    expect(found.get('terminal posts bend in the wind')).toMatch(
      /terminal post B, that holds 10'-0" of it, would bend by \d+ % of what thin/,
    );
  });

  it('[F30] the wind on ice counts where it bends a post more', () => {
    const calm = setConditions(fenceSite, { wind: { speed: 90, exposure: 'B' } });
    const icy = setConditions(calm, { ice: { thickness: 1 / 4, speed: 90 } });
    expect(said(calm).map(([rule]) => rule)).not.toContain('posts bend in the wind');
    expect(new Map(said(icy)).get('posts bend in the wind')).toContain('90 mph on 1/4" of ice');
  });

  it('[F30] lengths are written as the site writes them', () => {
    const site = setConditions(
      { ...fenceSite, lengths: { system: 'mm', fraction: 16 } },
      { wind: { speed: 20, exposure: 'B' }, ice: { thickness: 1 / 4, speed: 300 } },
    );
    const found = said(withBuild(site, { fabricHeight: inches(4000) }));
    const told = found.map(([, message]) => message).join(' ');
    expect(told).toContain('300 mph on 6 mm of ice');
    expect(told).toContain('asked more than 12192 mm');
    // the build is called 6 ft
    expect(told.replaceAll('6 ft', '')).not.toMatch(/\d(?: ?in |'-| ft )/);
  });

  it('[F35] no step is offered where shorter bays do not help', () => {
    const bends = (site: Site) =>
      layOutSite(site).flags.find(({ rule }) => rule === 'posts bend in the wind');
    const site = setConditions(fenceSite, { wind: windy });
    expect(bends(site)?.mend).toEqual({ kind: 'bays by wind' });
    const weak = withBuild(site, { fabricHeight: inches(400) });
    expect(bends(weak)?.mend).toBeUndefined();
    expect(bends(weak)?.message).toContain('no bay is short enough for them');
    const bog = inches(700);
    const crossed = addFeature(site, { kind: 'keep-out', label: 'bog' }, [
      { x: 250, y: -90 },
      { x: 250 + bog, y: -90 },
      { x: 250 + bog, y: 90 },
      { x: 250, y: 90 },
    ]);
    expect(bends(crossed)?.mend).toBeUndefined();
    expect(bends(setConditions(crossed, { bays: 'by wind' }))?.mend).toBeUndefined();
  });

  it('[F30] of gate posts of unlike pipes the weakest is told, and the deepest hole asked mends all', () => {
    const gates = gateOn(gateOn(fenceSite, 0, { from: 'start', offset: inches(240) }, 2), 0, {
      from: 'end',
      offset: inches(240),
    });
    const [wide, narrow] = Object.keys(gates.gates) as GateId[];
    const pipe = (od: number) => ({
      label: `of ${od}`,
      od: inches(od),
      wall: inches(0.1),
      section: 'round' as const,
    });
    const site = setConditions(
      setGatePost(setGatePost(gates, wide!, pipe(8)), narrow!, pipe(1.5)),
      { wind: windy },
    );
    const found = layOutSite(site).flags;
    const bends = found.filter(({ rule }) => rule === 'gate posts bend in the wind');
    expect(bends.map(({ message }) => message)).toEqual([expect.stringContaining('of 1.5 of')]);
    const shallow = found.find(({ rule }) => rule === 'holes shallow for the wind');
    expect(shallow?.message.match(/gate post holes/g)).toHaveLength(1);
    const rules = said(mendSite(site, shallow!.mend!)).map(([rule]) => rule);
    expect(rules).not.toContain('holes shallow for the wind');
  });

  it('[F30] the pole formula counts on holes as wide as they are dug', () => {
    const drawn = gateOn(fenceSite, 0, { from: 'middle', offset: inches(0) });
    const hinged = setGateHinged(drawn, firstGate(drawn), 'end');
    const site = setConditions(hinged, { wind: windy });
    const layout = layOutSite(site);
    const posts = [...postStructures(site, layout).values()].flat();
    // that on which the gate latches has the hole of the leaf too
    const gatePosts = [...layout.posts.values()].filter(({ gates }) => gates.length > 0);
    expect(gatePosts.map(({ hole }) => hole.diameter)).toEqual([18, 18]);
    for (const { post, footing } of posts) expect(footing.diameter).toBe(post.hole.diameter);
  });

  it('[F30] a fence over 15 ft has the wind of its height', () => {
    const tall = (fabricHeight: number) =>
      withBuild(setConditions(fenceSite, { wind: { speed: 100, exposure: 'B' } }), {
        fabricHeight: inches(fabricHeight),
      });
    const pressures = [100, 178, 358].map((height) => {
      const site = tall(height);
      const [posts] = [...postStructures(site, layOutSite(site)).values()];
      const wind = posts?.[0]?.wind;
      return wind !== undefined && isCompared(wind) ? wind.wind.velocity : 0;
    });
    expect(pressures[1]).toBe(pressures[0]);
    // twice as high: 2^(2 ÷ 7) as much
    expect(pressures[2]! / pressures[1]!).toBeCloseTo(2 ** (2 / 7), 9);
  });

  it('[F30] fabric that is more solid than the table goes is told to be', () => {
    const site = withBuild(setConditions(fenceSite, { wind: windy }), { solid: 0.9 });
    expect(said(site)).toEqual([
      ['too solid for the table', expect.stringMatching(/more than 70 % solid/)],
    ]);
  });
});
