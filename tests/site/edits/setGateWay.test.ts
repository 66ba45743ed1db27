import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openingOf } from '../../../src/engine/gate/openingOf.ts';
import { termsOf } from '../../../src/engine/gate/termsOf.ts';
import { recordAsSet } from '../../../src/site/edits/recordAsSet.ts';
import { setGateLeaves } from '../../../src/site/edits/setGateLeaves.ts';
import { setGateWay } from '../../../src/site/edits/setGateWay.ts';
import type { Leaf } from '../../../src/site/gate.ts';
import type { GateWay } from '../../../src/site/gateWay.ts';
import type { GateId, LeafId } from '../../../src/site/ids.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { inOrder } from '../../../src/site/pathOrder.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { radians } from '../../../src/units/radians.ts';
import { sampleSite } from '../sampleSite.ts';
import { wayOf } from './anyEdits.ts';

const parts = { hinge: 'hardware:1', latch: 'hardware:2' } as const;
const swing: GateWay = { kind: 'swing', turns: radians(Math.PI / 2) };
const stop: GateWay = { kind: 'centre stop', stop: inches(4), turns: radians(Math.PI / 2) };
const gap = (clear: number): GateWay => ({ kind: 'gap', clear: inches(clear) });
const slide = (stores: 'start' | 'end' = 'start'): GateWay => ({
  kind: 'cantilever',
  overlap: inches(6),
  counterbalance: inches(60),
  rollers: inches(60),
  behind: inches(6),
  stores,
});

const closed = (site: Site, id: GateId, way: GateWay) => setGateWay(site, id, way, parts);
const leavesOf = (site: Site, id: GateId) => inOrder<LeafId, Leaf>(site.gates[id]?.leaves ?? {});
const target = (site: Site, id: GateId): number => {
  const gate = site.gates[id];
  return gate === undefined ? NaN : openingOf(termsOf(gate, site)).target;
};

describe('setGateWay', () => {
  it('[S25] any order of ways leaves a document that opens again', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(1), fc.nat(60)), { maxLength: 12 }), (ways) => {
        let site: Site = sampleSite;
        for (const [gate, way] of ways) {
          try {
            site = closed(site, `gate:${gate + 1}`, wayOf(way));
          } catch (error) {
            // only a gap that its parts would fill is refused, and the site stays as it was
            expect(String(error)).toMatch(/RangeError: gap of .* expected more/);
          }
          expect(openSite(saveSite(site))).toEqual({ ok: true, value: site });
        }
      }),
    );
  });

  it('[S25] a stop in the middle takes a second leaf, copied and flagged', () => {
    const site = closed(sampleSite, 'gate:2', stop);
    expect(leavesOf(site, 'gate:2')).toMatchObject([
      { id: 'leaf:4', widths: { top: 40 }, from: 'copied', hinge: 'hardware:1' },
      { id: 'leaf:3', widths: { top: 40 }, from: 'catalogue', hinge: 'hardware:1' },
    ]);
    expect(leavesOf(closed(site, 'gate:2', swing), 'gate:2').length).toBe(2);
  });

  it('[S25] leaves that roll keep the opening, and so do leaves that turn again', () => {
    for (const id of ['gate:1', 'gate:2'] as const) {
      const rolled = closed(sampleSite, id, slide());
      expect(target(rolled, id)).toBeCloseTo(target(sampleSite, id), 9);
      expect(leavesOf(rolled, id).map(({ hinge, from }) => [hinge, from])).toEqual(
        leavesOf(sampleSite, id).map(() => [null, 'catalogue']),
      );
      expect(target(closed(rolled, id, swing), id)).toBeCloseTo(target(sampleSite, id), 9);
    }
    // leaf = opening less the latch, and overlap and counterbalance: 6 + 60 (derived)
    const single = closed(sampleSite, 'gate:2', slide());
    const latch = sampleSite.hardware['hardware:2']?.takes.planned ?? NaN;
    expect(leavesOf(single, 'gate:2')[0]?.widths.top).toBeCloseTo(
      target(sampleSite, 'gate:2') - latch + 6 + 60,
      9,
    );
  });

  it('[S25] a gap that is closed gets a leaf of its width less the parts', () => {
    const open = closed(sampleSite, 'gate:2', gap(60));
    expect(open.gates['gate:2']).toMatchObject({ leaves: {}, latch: null });
    expect(target(open, 'gate:2')).toBe(60);
    for (const way of [swing, stop, slide()]) {
      const filled = closed(open, 'gate:2', way);
      expect(target(filled, 'gate:2')).toBeCloseTo(60, 9);
      expect(leavesOf(filled, 'gate:2').every(({ from }) => from === 'catalogue')).toBe(true);
    }
    expect(() => closed(closed(sampleSite, 'gate:2', gap(1)), 'gate:2', swing)).toThrow(
      new RangeError('gap of 1 in: expected more than its hinges and latch take up'),
    );
  });

  it('[S25] what the crew set stays on record but for leaves and hinges that are gone', () => {
    const found = recordAsSet(sampleSite, 'gate:2', {
      by: 'R',
      on: 'Monday',
      top: inches(44),
      bottom: null,
      remark: '',
      leans: { start: null, end: null },
      leaves: { 'leaf:3': { top: inches(40), middle: null, bottom: null } },
      hinges: { 'leaf:3': inches(1.75) },
    });
    const rolled = closed(found, 'gate:2', slide()).gates['gate:2']?.asSet;
    expect(rolled).toMatchObject({ top: 44, leaves: {}, hinges: {} });
    const again = closed(found, 'gate:2', { ...swing, turns: radians(3) }).gates['gate:2'];
    expect(again?.asSet).toBe(found.gates['gate:2']?.asSet);
  });

  it('[S17] of two leaves that roll the one at the end to which a single leaf rolls stays', () => {
    for (const stores of ['start', 'end'] as const) {
      const rolled = closed(sampleSite, 'gate:1', slide(stores));
      const kept = leavesOf(setGateLeaves(rolled, 'gate:1', 1), 'gate:1').map(({ id }) => id);
      expect(kept).toEqual([stores === 'start' ? 'leaf:1' : 'leaf:2']);
    }
  });

  it('[S9] the same way again changes nothing', () => {
    const way = sampleSite.gates['gate:1']?.way;
    if (way === undefined) throw new Error('the sample lost its gate');
    expect(closed(sampleSite, 'gate:1', way)).toBe(sampleSite);
    expect(() => closed(sampleSite, 'gate:9', swing)).toThrow(
      'gates: expected a gate of this site',
    );
  });
});
