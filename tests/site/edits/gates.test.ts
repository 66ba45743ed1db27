import { oneWidth } from '../../../src/site/oneWidth.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addGate } from '../../../src/site/edits/addGate.ts';
import type { NewGate } from '../../../src/site/edits/addGate.ts';
import { moveGate } from '../../../src/site/edits/moveGate.ts';
import { removeGate } from '../../../src/site/edits/removeGate.ts';
import { renameGate } from '../../../src/site/edits/renameGate.ts';
import { setGateHinged } from '../../../src/site/edits/setGateHinged.ts';
import { setGateLatch } from '../../../src/site/edits/setGateLatch.ts';
import { setGateLeaf } from '../../../src/site/edits/setGateLeaf.ts';
import { setGateLeaves } from '../../../src/site/edits/setGateLeaves.ts';
import { setGateNominal } from '../../../src/site/edits/setGateNominal.ts';
import { setGateOpens } from '../../../src/site/edits/setGateOpens.ts';
import { setGatePost } from '../../../src/site/edits/setGatePost.ts';
import type { Gate, Leaf } from '../../../src/site/gate.ts';
import { leafCounts } from '../../../src/site/gateWay.ts';
import type { LeafId } from '../../../src/site/ids.ts';
import { inOrder } from '../../../src/site/pathOrder.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { sampleSite } from '../sampleSite.ts';
import { after, anyMoves } from './anyEdits.ts';

const plan: NewGate = {
  label: 'Side',
  line: 'line:1',
  leg: 'vertex:3',
  anchor: { from: 'middle', offset: inches(0) },
  leaves: [
    { widths: oneWidth(inches(40)), from: 'measured', hinge: 'hardware:1' },
    { widths: oneWidth(inches(30)), from: 'measured', hinge: 'hardware:1' },
  ],
  latch: 'hardware:3',
  opens: 'left',
  hingedAt: 'start',
  nominal: null,
  post: null,
};

const leavesOf = (site: Site, id: 'gate:1' | 'gate:2' | 'gate:3') =>
  inOrder<LeafId, Leaf>(site.gates[id]?.leaves ?? {});

describe('gates', () => {
  it('[S8] a new gate stands under the next id with its leaves in a row', () => {
    const site = addGate(sampleSite, plan);
    expect(site.gates['gate:3']).toMatchObject({ line: 'line:1', leg: 'vertex:3', label: 'Side' });
    expect(leavesOf(site, 'gate:3').map((leaf) => [leaf.id, leaf.widths.top])).toEqual([
      ['leaf:4', 40],
      ['leaf:5', 30],
    ]);
    expect(site.gates['gate:1']).toBe(sampleSite.gates['gate:1']);
  });

  it('each thing that is said of a gate can be changed, and nothing else changes with it', () => {
    const changes: [Site, object][] = [
      [setGateOpens(sampleSite, 'gate:1', 'right'), { opens: 'right' }],
      [setGateHinged(sampleSite, 'gate:1', 'end'), { hingedAt: 'end' }],
      [setGateLatch(sampleSite, 'gate:1', 'hardware:2'), { latch: 'hardware:2' }],
      [renameGate(sampleSite, 'gate:1', 'Alley'), { label: 'Alley' }],
      [setGateNominal(sampleSite, 'gate:1', null), { nominal: null }],
      [
        setGatePost(sampleSite, 'gate:1', {
          label: '3',
          od: inches(2.875),
          wall: inches(0.2),
          section: 'round',
        }),
        { post: { label: '3', od: 2.875, wall: 0.2, section: 'round' } },
      ],
      [
        moveGate(sampleSite, 'gate:1', { from: 'end', offset: inches(1) }),
        { anchor: { from: 'end', offset: 1 } },
      ],
      [
        moveGate(
          sampleSite,
          'gate:1',
          { from: 'end', offset: inches(1) },
          { line: 'line:2', leg: 'vertex:5' },
        ),
        { anchor: { from: 'end', offset: 1 }, line: 'line:2', leg: 'vertex:5' },
      ],
    ];
    for (const [site, change] of changes) {
      expect(site.gates['gate:1']).toEqual({ ...sampleSite.gates['gate:1'], ...change });
      expect({ ...site, gates: null }).toEqual({ ...sampleSite, gates: null });
      expect(site.gates['gate:2']).toBe(sampleSite.gates['gate:2']);
    }
    expect(Object.keys(removeGate(sampleSite, 'gate:1').gates)).toEqual(['gate:2']);
  });

  it('[S9] what a gate says already leaves the very same site', () => {
    expect(setGateOpens(sampleSite, 'gate:1', 'left')).toBe(sampleSite);
    expect(setGatePost(sampleSite, 'gate:1', null)).toBe(sampleSite);
    expect(setGateNominal(sampleSite, 'gate:1', inches(120))).toBe(sampleSite);
    expect(setGateLeaf(sampleSite, 'gate:1', 'leaf:1', { widths: oneWidth(inches(56.875)) })).toBe(
      sampleSite,
    );
    expect(setGateLeaves(sampleSite, 'gate:1', 2)).toBe(sampleSite);
    expect(moveGate(sampleSite, 'gate:1', { from: 'start', offset: inches(96) })).toBe(sampleSite);
  });

  it('a leaf is changed for itself', () => {
    const site = setGateLeaf(sampleSite, 'gate:1', 'leaf:2', {
      widths: oneWidth(inches(57.5)),
      from: 'measured',
    });
    expect(site.gates['gate:1']?.leaves['leaf:2']).toMatchObject({
      widths: { top: 57.5 },
      order: 'a1',
    });
    expect(site.gates['gate:1']?.leaves['leaf:1']).toBe(
      sampleSite.gates['gate:1']?.leaves['leaf:1'],
    );
  });

  it('[S17] a second leaf is copied and says so, on the far side from the hinges', () => {
    const site = setGateLeaves(sampleSite, 'gate:2', 2);
    expect(leavesOf(site, 'gate:2')).toMatchObject([
      { id: 'leaf:4', widths: { top: 40 }, from: 'copied', hinge: 'hardware:1' },
      { id: 'leaf:3', widths: { top: 40 }, from: 'catalogue' },
    ]);
    expect(setGateLeaves(site, 'gate:2', 1)).toEqual(sampleSite);
  });

  it('[S17] of two leaves the one at the hinged end stays', () => {
    const start = setGateLeaves(sampleSite, 'gate:1', 1);
    expect(leavesOf(start, 'gate:1').map((leaf) => leaf.id)).toEqual(['leaf:1']);
    const end = setGateLeaves(setGateHinged(sampleSite, 'gate:1', 'end'), 'gate:1', 1);
    expect(leavesOf(end, 'gate:1').map((leaf) => leaf.id)).toEqual(['leaf:2']);
  });

  it('[S17] a leaf whose key leaves no room gets a fresh one', () => {
    for (const hingedAt of ['start', 'end'] as const) {
      const gate = sampleSite.gates['gate:2'];
      const leaf = gate?.leaves['leaf:3'];
      if (gate === undefined || leaf === undefined) throw new Error('the sample lost its gate');
      const odd = { ...gate, hingedAt, leaves: { 'leaf:3': { ...leaf, order: '7' } } } as const;
      const site = { ...sampleSite, gates: { ...sampleSite.gates, 'gate:2': odd } };
      const ids = leavesOf(setGateLeaves(site, 'gate:2', 2), 'gate:2').map(({ id }) => id);
      expect(ids).toEqual(hingedAt === 'start' ? ['leaf:3', 'leaf:4'] : ['leaf:4', 'leaf:3']);
    }
  });

  it('[S17] one leaf, two, one is the gate as it was', () => {
    fc.assert(
      fc.property(anyMoves, (moves) => {
        const site = moves.reduce(after, sampleSite);
        for (const [id, { way }] of Object.entries(site.gates) as ['gate:1', Gate][]) {
          if (leafCounts[way.kind].length < 2) continue;
          const one = setGateLeaves(site, id, 1);
          expect(setGateLeaves(setGateLeaves(one, id, 2), id, 1)).toEqual(one);
        }
      }),
    );
  });

  it('[S11] what cannot be done is told in one line', () => {
    const throwing: [() => Site, string][] = [
      [
        () => removeGate(sampleSite, 'gate:9'),
        'gates: expected a gate of this site, found "gate:9"',
      ],
      [
        () => addGate(sampleSite, { ...plan, leg: 'vertex:4' }),
        'gates › gate:3 › leg: expected the start of a leg of line:1, found "vertex:4"',
      ],
      [
        () => addGate(sampleSite, { ...plan, line: 'line:9' }),
        'gates › gate:3 › line: expected a fence line of this site, found "line:9"',
      ],
      [
        () => addGate(sampleSite, { ...plan, leaves: [] }),
        'gates › gate:3 › leaves: expected one leaf or two, found 0',
      ],
      [
        () => addGate(sampleSite, { ...plan, latch: 'hardware:1' }),
        'gates › gate:3 › latch: expected a latch or drop rod of this site, found "hardware:1"',
      ],
      [
        () => moveGate(sampleSite, 'gate:1', { from: 'start', offset: inches(Number.NaN) }),
        'gates › gate:1 › anchor › offset: expected a number, found NaN',
      ],
      [
        () =>
          moveGate(sampleSite, 'gate:1', { from: 'start', offset: inches(0) }, { line: 'line:2' }),
        'gates › gate:1 › leg: expected the start of a leg of line:2, found "vertex:2"',
      ],
      [
        () => setGateLatch(sampleSite, 'gate:1', 'hardware:9'),
        'gates › gate:1 › latch: expected a latch or drop rod of this site, found "hardware:9"',
      ],
      [
        () => setGateLeaf(sampleSite, 'gate:1', 'leaf:3', {}),
        'gates › gate:1 › leaves: expected a leaf of it, found "leaf:3"',
      ],
      [
        () => setGateLeaf(sampleSite, 'gate:1', 'leaf:1', { widths: oneWidth(inches(-1)) }),
        'gates › gate:1 › leaves › leaf:1 › widths › top: expected more than 0, found -1',
      ],
      [
        () => setGateLeaves(sampleSite, 'gate:1', 3 as 2),
        'gates › gate:1 › leaves: expected one leaf or two, found 3',
      ],
      [
        () => setGateNominal(sampleSite, 'gate:1', inches(Infinity)),
        'gates › gate:1 › nominal: expected a number, found Infinity',
      ],
    ];
    for (const [act, line] of throwing) expect(act).toThrow(new RangeError(line));
  });
});
