import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Site } from '../../../src/site/site.ts';
import { setGateNominal } from '../../../src/site/edits/setGateNominal.ts';
import { setLengths } from '../../../src/site/edits/setLengths.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, firstGate, gateOn, spec } from '../plainYard.ts';

const flagsFor = (site: Site): string[] =>
  layOutSite(site).flags.map(({ level, rule, message }) => {
    expect(message).not.toContain('\n');
    return `${level}: ${rule}`;
  });

describe('flagsOf', () => {
  it('[F1] a gate wider than its leg gets one line that says by how much', () => {
    const site = gateOn(
      fence(bare, [
        [0, 0],
        [96, 0],
      ]),
      0,
      { from: 'middle', offset: 0 },
      2,
    );
    const { flags, gates } = layOutSite(site);
    expect(flags.map(({ rule }) => rule)).toEqual(['gate wider than its leg']);
    // 120 in of opening and two half posts of 2.875 in against 96 in
    expect(flags[0]?.message).toContain(`2'-2 7/8"`);
    expect(Object.values(gates)[0]?.placed).toBe(false);
  });

  it('[F2] of two openings over each other the later one gives way, with one line', () => {
    const one = gateOn(
      fence(bare, [
        [0, 0],
        [600, 0],
      ]),
      0,
      { from: 'middle', offset: 0 },
    );
    const site = gateOn(one, 0, { from: 'middle', offset: 10 });
    expect(flagsFor(site)).toEqual(['stop: openings overlap']);
    expect(Object.values(layOutSite(site).gates).map(({ placed }) => placed)).toEqual([
      true,
      false,
    ]);
  });

  it('[F3] two posts whose holes meet have no room between them', () => {
    expect(
      flagsFor(
        fence(bare, [
          [0, 0],
          [300, 0],
          [300, 6],
          [600, 6],
        ]),
      ),
    ).toEqual(['stop: no room between posts']);
  });

  it('[F4] an empty fence line is kept and asks for marks', () => {
    expect(flagsFor(fence(bare, [[0, 0]]))).toEqual(['settle: empty fence line']);
  });

  it('[F5] two marks on one spot count as one, with one line', () => {
    const site = fence(bare, [
      [0, 0],
      [240, 0],
      [240, 0.001],
      [240, 240],
    ]);
    expect(flagsFor(site)).toEqual(['settle: two marks on one spot']);
  });

  it('[F6] a leg of a mile gets one line that asks to check the reading', () => {
    expect(
      flagsFor(
        fence(bare, [
          [0, 0],
          [63360, 0],
        ]),
      ),
    ).toEqual(['caution: leg of a mile or more']);
  });

  it('[F7] leaves that were not measured and parts that are assumed are said once each', () => {
    const site = gateOn(
      fence(bare, [
        [0, 0],
        [600, 0],
      ]),
      0,
      { from: 'middle', offset: 0 },
    );
    const loose: Site = {
      ...site,
      gates: Object.fromEntries(
        Object.entries(site.gates).map(([id, gate]) => [
          id,
          {
            ...gate,
            leaves: Object.fromEntries(
              Object.entries(gate.leaves).map(([leaf, own]) => [leaf, { ...own, from: 'copied' }]),
            ),
          },
        ]),
      ) as Site['gates'],
      hardware: Object.fromEntries(
        Object.entries(site.hardware).map(([id, part]) => [id, { ...part, from: 'assumed' }]),
      ) as Site['hardware'],
    };
    expect(flagsFor(loose)).toEqual([
      'settle: leaf not measured',
      'caution: hardware assumed',
      'caution: hardware assumed',
    ]);
  });

  it('[F3] posts of two fences whose holes meet have no room either, with one line', () => {
    const one = fence(bare, [
      [0, 0],
      [240, 0],
    ]);
    const site = fence(one, [
      [240, 5],
      [240, 245],
    ]);
    expect(flagsFor(site)).toEqual(['stop: no room between posts']);
    // two holes of 10 in, for posts of 2.375 in (ASTM F567-07 5.1: four times, to the next auger)
    expect(layOutSite(site).flags[0]?.message).toContain(
      'stand 5" apart: their holes need 5" more',
    );
  });

  it('[F3] a stretch gets one line however many of its posts are too close', () => {
    const tight: Site = { ...bare, specs: { 'spec:six': { ...spec, maxBay: inches(8.001) } } };
    const site = fence(tight, [
      [0, 0],
      [808, 0],
    ]);
    expect(flagsFor(site)).toEqual(['stop: no room between posts']);
  });

  it('[F3] the two posts of one gate may stand as close as its opening', () => {
    const site = gateOn(
      fence(bare, [
        [0, 0],
        [600, 0],
      ]),
      0,
      { from: 'middle', offset: 0 },
    );
    const narrow: Site = {
      ...site,
      gates: Object.fromEntries(
        Object.entries(site.gates).map(([id, gate]) => [
          id,
          {
            ...gate,
            leaves: Object.fromEntries(
              Object.entries(gate.leaves).map(([leaf, own]) => [
                leaf,
                { ...own, width: inches(8) },
              ]),
            ),
          },
        ]),
      ) as Site['gates'],
    };
    expect(flagsFor(narrow)).toEqual([]);
  });

  it('[F5] a mark passed twice in a row is left out once, with one line', () => {
    const site = fence(bare, [
      [0, 0],
      [240, 0],
    ]);
    const line = site.lines['line:1'];
    if (line === undefined) throw new Error('no line');
    const last = Object.values(line.path).toSorted((a, b) => (a.order < b.order ? 1 : -1))[0];
    const path = { ...line.path, 'vertex:x': { mark: last?.mark ?? 'mark:1', order: 'zz' } };
    const again: Site = { ...site, lines: { 'line:1': { ...line, path } } };
    expect(flagsFor(again)).toEqual(['settle: one mark twice in a row']);
    expect(Object.values(layOutSite(again).lines).map(({ legs }) => legs.length)).toEqual([1]);
  });

  it('[F8] a gate called otherwise than its opening says what that would leave', () => {
    const site = gateOn(
      fence(bare, [
        [0, 0],
        [600, 0],
      ]),
      0,
      { from: 'middle', offset: 0 },
    );
    const id = firstGate(site);
    expect(flagsFor(setGateNominal(site, id, inches(48)))).toEqual([]);
    const called = setGateNominal(site, id, inches(47));
    expect(flagsFor(called)).toEqual(['settle: called otherwise than its opening']);
    // 47 - (44 + 1 7/8) leaves 1 1/8; the latch wants 2 at least
    expect(layOutSite(called).flags[0]?.message).toContain(
      'set at the nominal 3\'-11", its latch would stand 1 1/8" open and not catch: too narrow by 7/8"',
    );
    // 44 and 1 7/8 do not go between posts 45 apart: 7/8 is missing, and 2 more for the latch
    const close = layOutSite(setGateNominal(site, id, inches(45))).flags[0]?.message;
    expect(close).toContain('the leaves would be 7/8" too wide to go in: too narrow by 2 7/8"');
  });

  it('[U10] what flags say of openings is fine enough on a site in hundredths of a foot', () => {
    const ground = fence(setLengths(bare, { system: 'decimal feet', fraction: 8 }), [
      [0, 0],
      [600, 0],
    ]);
    const site = gateOn(ground, 0, { from: 'middle', offset: 0 });
    const [flag] = layOutSite(setGateNominal(site, firstGate(site), inches(47))).flags;
    expect(flag?.message).toContain('called 47" but its opening is 48"');
    expect(flag?.message).toContain('stand 1 1/8" open and not catch: too narrow by 7/8"');
  });

  it('[F9] a largest bay shorter than a hole lays out no line posts, with one line', () => {
    for (const bay of [1e-300, 0.5, 7.9]) {
      const tight: Site = { ...bare, specs: { 'spec:six': { ...spec, maxBay: inches(bay) } } };
      const site = fence(tight, [
        [0, 0],
        [648, 0],
      ]);
      expect(flagsFor(site)).toEqual(['stop: bay shorter than a hole']);
      expect(layOutSite(site).posts.size).toBe(2);
    }
  });

  it('[F10] a yard of more line posts than are laid out keeps its other fences, with one line', () => {
    const tight: Site = { ...bare, specs: { 'spec:six': { ...spec, maxBay: inches(9) } } };
    const long = fence(tight, [
      [-600_000, 0],
      [600_000, 0],
    ]);
    const site = fence(long, [
      [0, 900],
      [0, 1800],
    ]);
    expect(flagsFor(site)).toEqual(['stop: too many posts', 'caution: leg of a mile or more']);
    const { lines } = layOutSite(site);
    expect(lines['line:1']?.runs.map(({ posts }) => posts.length)).toEqual([2]);
    expect(lines['line:2']?.runs.map(({ posts }) => posts.length)).toEqual([101]);
  });

  it('says stop before settle before caution, and each by its place', () => {
    const crossed = gateOn(
      fence(bare, [
        [0, 0],
        [96, 0],
        [96, 0.001],
        [96, 70_000],
      ]),
      0,
      { from: 'middle', offset: 0 },
      2,
    );
    const flags = flagsFor(crossed);
    expect(flags).toEqual([
      'stop: gate wider than its leg',
      'settle: two marks on one spot',
      'caution: leg of a mile or more',
    ]);
  });
});
