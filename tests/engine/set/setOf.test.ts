import { describe, expect, it } from 'vitest';
import { setOf } from '../../../src/engine/set/setOf.ts';
import type { AsSet } from '../../../src/site/asSet.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { gap, wayYard } from '../wayYard.ts';
import { found, gateOf, leafIds, onlyGate, partOf } from './setYard.ts';

// leaves 56 1/4, hinge sets measured from 1 3/4 to 2 and planned at 2, drop-rod latch planned at 2:
// common practice, no published source
const hinge = partOf('hinge', [1.75, 2, 2]);
const double = (reach: number, spare: Site['hardware'] = {}): Site =>
  gateOf([56.25, 56.25], { hinge, latch: partOf('drop rod', [2, 2, reach]), spare });

const result = (site: Site, asSet: AsSet) => {
  const set = setOf(site, { ...onlyGate(site), asSet });
  if (set === null) throw new Error('nothing was set');
  return set;
};

describe('the double gate of 118 1/2 as it was set', () => {
  it('[V1] holds at 118 1/2 as it is', () => {
    const set = result(double(2.5), found(118.5, 118.5));
    expect(set.governs.gap).toMatchObject({ verdict: 'holds', planned: 2 });
    expect(set.remedies).toEqual([]);
    expect(set.outOfParallel).toBe(0);
  });

  it('[V2] may hold at 119: first measure the hinges, which must show 4 together', () => {
    const set = result(double(2.5), found(119, 119));
    expect(set.governs.gap).toMatchObject({ verdict: 'may hold', planned: 2.5, least: 2.5 });
    // 119 less the leaves of 112 1/2 leaves 6 1/2; a fork that catches up to 2 1/2 wants hinges of 4
    expect(set.remedies.map(({ kind }) => kind)).toEqual([
      'measure',
      'other latch',
      'shim',
      'reset',
    ]);
    expect(set.remedies[0]).toMatchObject({
      takesUp: 0,
      enough: false,
      what: 'Measure the hinges: it hangs if they take at least 4" together.',
    });
    // for sure a latch that catches from 2 1/2 (hinges at 2) to 3 (hinges at 1 3/4)
    expect(set.remedies[1]?.what).toContain('catches from 2 1/2" to 3"');
    expect(set.remedies[1]?.enough).toBe(false);
  });

  it('[V1] holds at 119 with hinges that were measured on site at 2', () => {
    const [one, other] = leafIds(double(2.5));
    const hinges = { [one ?? 'leaf:']: inches(2), [other ?? 'leaf:']: inches(2) };
    const set = result(double(2.5), found(119, 119, { hinges }));
    expect(set.governs.gap).toMatchObject({ verdict: 'holds', planned: 2.5 });
    expect(set.opening.terms.filter(({ role }) => role === 'hinge')).toMatchObject([
      { low: 2, planned: 2, high: 2, source: 'measured on site', on: '2026-11-25' },
      { low: 2, planned: 2, high: 2, source: 'measured on site', on: '2026-11-25' },
    ]);
    // one of them only, and the other may still be 1 3/4: 119 - 112 1/2 - 3 3/4 leaves 2 3/4
    const half = result(double(2.5), found(119, 119, { hinges: { [one ?? 'leaf:']: inches(2) } }));
    expect(half.governs.gap).toMatchObject({ verdict: 'may hold', most: 2.75 });
    expect(half.remedies[0]?.what).toContain('if they take at least 2".');
  });

  it('[V2] names a latch of the site that reaches', () => {
    const long = partOf('drop rod', [2, 2, 3], { label: 'Long fork' });
    const set = result(double(2.5, { 'hardware:long': long }), found(119, 119));
    expect(set.remedies.find(({ kind }) => kind === 'other latch')).toMatchObject({
      what: 'Take another latch: Long fork catches from 2" to 3".',
      takesUp: 0.5,
      enough: true,
    });
  });

  it('[V1] of top and bottom the worse governs', () => {
    const set = result(double(2.5), found(118.5, 117));
    expect(set.governs).toMatchObject({ at: 'bottom', gap: { verdict: 'too narrow', by: 1 } });
    expect(set.outOfParallel).toBe(1.5);
    expect(set.widths.map(({ gap: { verdict } }) => verdict)).toEqual(['holds', 'too narrow']);
  });

  it('[V1] a leaf measured again on site replaces the planned one', () => {
    const [one] = leafIds(double(2.5));
    const widths = { top: inches(56.75), middle: null, bottom: inches(56.5) };
    const set = result(double(2.5), found(118.5, 118.5, { leaves: { [one ?? 'leaf:']: widths } }));
    expect(set.opening.terms[1]).toMatchObject({ low: 56.5, planned: 56.75, high: 56.75 });
    // 118 1/2 less 56 3/4, 56 1/4 and hinges of 4
    expect(set.governs.gap).toMatchObject({ verdict: 'may hold', planned: 1.5 });
  });
});

describe('remedies', () => {
  const single = (spare: Site['hardware'] = {}, of = hinge): Site =>
    gateOf([44], { hinge: of, latch: partOf('latch', [1.75, 2, 2.25]), spare });

  it('[V2] hinges that can be adjusted are turned no further than is missing', () => {
    const loose = partOf('hinge', [1.5, 1.75, 2.25], { spread: 'adjustable' });
    const set = result(single({}, loose), found(48.25, 48.25));
    // 48 1/4 less 44 and 1 3/4 leaves 2 1/2, 1/4 more than the latch catches
    expect(set.governs.gap.verdict).toBe('holds');
    expect(set.remedies).toMatchObject([
      {
        kind: 'adjust',
        takesUp: 0.5,
        enough: true,
        what: 'Adjust the hinges: turn them out so that together they take 1/4" more.',
      },
    ]);
  });

  it('[V2] a hinge that takes less is named where the leaf has no room', () => {
    const slim = partOf('hinge', [1, 1, 1], { label: 'Slim hinge' });
    const broad = partOf('hinge', [3, 3, 3], { label: 'Broad hinge' });
    const parts = { 'hardware:slim': slim, 'hardware:broad': broad };
    const set = result(single(parts), found(46.75, 46.75));
    // 44 + 2 + 1 3/4 is 47 3/4: 1 is missing for sure; 44 + 1 + 1 3/4 is 46 3/4
    expect(set.governs.gap).toMatchObject({ verdict: 'too narrow', by: 0.75 });
    expect(set.remedies.find(({ kind }) => kind === 'other hinge')).toMatchObject({
      what: 'Hang the leaf on another hinge: Slim hinge takes 1" less.',
      takesUp: 1,
      enough: true,
    });
    expect(set.remedies.map(({ kind }) => kind)).not.toContain('measure');
  });

  it('[V2] a hinge made for other posts is not offered', () => {
    const other = partOf('hinge', [1, 1, 1], {
      fits: { post: { low: inches(4), high: inches(4) }, frame: null },
    });
    const kinds = result(single({ 'hardware:slim': other }), found(46.75, 46.75)).remedies;
    expect(kinds.map(({ kind }) => kind)).not.toContain('other hinge');
  });

  it('[V2] hinges turned round their posts give what lies between face and pin', () => {
    const pinned = partOf('hinge', [1.75, 2, 2], { pin: inches(1) });
    const set = result(single({}, pinned), found(47.25, null));
    expect(set.outOfParallel).toBeNull();
    expect(set.remedies.find(({ kind }) => kind === 'turn hinges')).toMatchObject({
      takesUp: 1,
      enough: true,
      working: 'from face to pin 1"; 1/2" is missing',
    });
    const wide = result(single({}, pinned), found(49, null)).remedies.map(({ kind }) => kind);
    expect(wide).not.toContain('turn hinges');
  });

  it('[V2] no latch makes room for leaves that do not go in; a leaf is trimmed by what is missing', () => {
    const set = result(single(), found(45.5, 45.5));
    expect(set.governs.gap.planned).toBe(-0.5);
    expect(set.remedies.map(({ kind }) => kind)).toEqual(['trim', 'reset']);
    // 44 + 2 + 1 3/4 for sure, less 45 1/2
    expect(set.remedies[0]?.what).toBe('Have the leaf trimmed by 2 1/4".');
  });

  it('[V2] where no post leans the latch post is set again, of a double that of the second leaf', () => {
    const one = result(single(), found(49, 49)).remedies.at(-1);
    // 44, 2 and 2 are 48
    expect(one).toMatchObject({
      kind: 'reset',
      post: 'end',
      enough: true,
      what: 'Set the latch post again, plumb, measured at its face: 1" in, into the opening.',
    });
    const turned = { ...onlyGate(single()), hingedAt: 'end' as const, asSet: found(47, 47) };
    expect(setOf(single(), turned)?.remedies.at(-1)).toMatchObject({
      post: 'start',
      what: 'Set the latch post again, plumb, measured at its face: 1" out, away from the opening.',
    });
    const two = result(double(2.5), found(117.5, 117.5)).remedies.at(-1);
    expect(two).toMatchObject({ post: 'end' });
    expect(two?.what).toContain(
      'Set the post of leaf 2 again, plumb, measured at its face: 1" out',
    );
  });

  it('[V2] a post that leans is plumbed: its foot stays where the opening is right at the ground', () => {
    const leans = { start: inches(1.5), end: inches(0) };
    const set = result(double(2.5), found(117, 118.5, { leans }));
    expect(set.leans).toEqual(leans);
    expect(set.remedies.at(-1)).toMatchObject({
      post: 'start',
      enough: true,
      what: 'Set the post of leaf 1 again, plumb, measured at its face: at the ground stays; at the top 1 1/2" out, away from the opening.',
    });
  });

  it('[V1] a gap hangs nothing and gets no verdict, and neither does a gate that was not set', () => {
    expect(setOf(wayYard(gap), { ...onlyGate(wayYard(gap)), asSet: found(61, 61) })).toBeNull();
    expect(setOf(single(), onlyGate(single()))).toBeNull();
  });
});
