import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Site } from '../../../src/site/site.ts';
import { bare, fence, gateOn } from '../plainYard.ts';

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
});
