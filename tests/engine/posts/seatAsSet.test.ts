import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { restsOn } from '../../../src/engine/sign/restsOn.ts';
import type { AsSet } from '../../../src/site/asSet.ts';
import { recordAsSet } from '../../../src/site/edits/recordAsSet.ts';
import type { GateId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, firstGate, gateOn } from '../plainYard.ts';
import { randomSite } from '../randomSite.ts';

const setAt = (top: number, bottom: number | null = null): AsSet => ({
  by: 'AB',
  on: '2026-11-25',
  top: inches(top),
  bottom: bottom === null ? null : inches(bottom),
  leans: { start: null, end: null },
  leaves: {},
  hinges: {},
  remark: '',
});

const yard = (length: number, offset: number): Site =>
  gateOn(
    fence(bare, [
      [0, 0],
      [length, 0],
    ]),
    0,
    { from: 'start', offset },
  );

const baysOf = (site: Site): number[] =>
  Object.values(layOutSite(site).lines).flatMap(({ runs }) =>
    runs.flatMap(({ spaces }) => spaces.map(({ length }) => length)),
  );

describe('a gate that was set', () => {
  it('[P5] stands as it was set at the ground, and the line posts behind it are laid out again', () => {
    const site = yard(600, 120);
    const id = firstGate(site);
    const set = recordAsSet(site, id, setAt(48, 49));
    expect(layOutSite(set).gates[id]?.stands).toBe(49);
    // 48 planned with posts of 2.875: the space is 50.875, and 1 more as set
    expect(baysOf(site)[1]).toBe(50.875);
    expect(baysOf(set)[1]).toBe(51.875);
    const [before, after] = [baysOf(site).slice(2), baysOf(set).slice(2)];
    expect(after.length).toBe(before.length);
    after.forEach((bay, n) => expect(bay).toBeCloseTo((before[n] ?? 0) - 1 / before.length, 9));
    expect(layOutSite(recordAsSet(site, id, setAt(47.5))).gates[id]?.stands).toBe(47.5);
  });

  it('[P5] stands as planned where what was set would leave it other posts', () => {
    // two posts of 2.875, one shared with each end, and 48 between: it fills 50.875
    const site = yard(50.875, 0);
    const id = firstGate(site);
    const plan = layOutSite(site);
    expect(plan.gates[id]?.placed).toBe(true);
    const set = layOutSite(recordAsSet(site, id, setAt(49)));
    expect(set.gates[id]).toMatchObject({ placed: true, stands: 48 });
    expect(set.posts).toEqual(plan.posts);
  });

  it('[V4] has the posts and the opening that it was signed for', () => {
    const unset = (site: Site): Site => ({
      ...site,
      gates: Object.fromEntries(
        Object.entries(site.gates).map(([id, gate]) => [id, { ...gate, asSet: null }]),
      ),
    });
    let moved = 0;
    fc.assert(
      fc.property(randomSite, (site) => {
        const [set, plan] = [site, unset(site)].map((one) => ({
          site: one,
          layout: layOutSite(one),
        }));
        for (const id of Object.keys(site.gates) as GateId[]) {
          const [was, is] = [plan, set].map((one) => {
            const laid = one?.layout.gates[id];
            if (one === undefined || laid === undefined) throw new Error('not laid out');
            return restsOn(one.site, one.layout, laid);
          });
          expect(is).toEqual(was);
          const { stands, opening } = set?.layout.gates[id] ?? {};
          if (stands !== opening?.target) moved += 1;
        }
      }),
      { numRuns: 300 },
    );
    expect(moved).toBeGreaterThan(20);
  });
});
