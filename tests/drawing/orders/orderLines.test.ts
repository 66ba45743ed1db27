import { describe, expect, it } from 'vitest';
import { loadLines } from '../../engine/load/loadLines.ts';
import { orderLines } from '../../../src/drawing/orders/orderLines.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { addHardware } from '../../../src/site/edits/addHardware.ts';
import { changeHardware } from '../../../src/site/edits/changeHardware.ts';
import { reverseLine } from '../../../src/site/edits/reverseLine.ts';
import { setGateHinged } from '../../../src/site/edits/setGateHinged.ts';
import { setGateLeaf } from '../../../src/site/edits/setGateLeaf.ts';
import type { LeafId, LineId } from '../../../src/site/ids.ts';
import type { GateWay } from '../../../src/site/gateWay.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { cantilever, centreStop, gap, wayYard } from '../../engine/wayYard.ts';
import { sampleYards } from '../sampleYards.ts';
import { drive, walk, yard } from './signedYard.ts';

const linesOf = (site: Site) => orderLines(site, layOutSite(site));
const brief = (site: Site) =>
  linesOf(site).map(({ group, count, item, width, hinges, gates }) =>
    [group, count, item, width, hinges, gates].join(' | '),
  );

describe('orderLines', () => {
  it('[D46] counts every leaf, two hinge sets for each, and latches, alike ones together', () => {
    expect(brief(yard)).toEqual([
      'Leaves | 1 | Leaf | 4\'-8 7/8" | right | Drive gate',
      'Leaves | 1 | Leaf | 4\'-8 7/8" | left | Drive gate',
      'Leaves | 1 | Leaf | 3\'-8" | right | Walk gate',
      'Hinges | 6 | hinge |  |  | Drive gate, Walk gate',
      'Latches | 1 | drop rod |  |  | Drive gate',
      'Latches | 1 | latch |  |  | Walk gate',
    ]);
  });

  it('[D46] hangs a leaf on the other side when its hinges change ends, not when the line is turned', () => {
    const sides = (site: Site) => linesOf(site).map(({ hinges }) => hinges);
    expect(sides(setGateHinged(yard, walk, 'end'))[2]).toBe('left');
    const line = Object.keys(yard.lines)[0] as LineId;
    expect(sides(reverseLine(yard, line)).toSorted()).toEqual(sides(yard).toSorted());
  });

  it('[D46] writes a leaf off the marks of the tape as it is, and one out of true with its ends', () => {
    const [leaf] = Object.keys(yard.gates[walk]?.leaves ?? {}) as LeafId[];
    const of = (top: number, bottom: number | null) => {
      const widths = {
        top: inches(top),
        middle: null,
        bottom: bottom === null ? null : inches(bottom),
      };
      return linesOf(setGateLeaf(yard, walk, leaf ?? 'leaf:none', { widths }))[2]?.width;
    };
    expect(of(44.0625, null)).toBe('3\'-8 1/16"');
    expect(of(44, 44.25)).toBe('3\'-8 1/4" (top 3\'-8", bottom 3\'-8 1/4")');
    expect(Object.keys(yard.gates)).toContain(drive);
  });

  it('[D46] orders no hinges for leaves that roll, two latches at a stop, nothing for a gap', () => {
    const counts = (way: GateWay, leaves: 1 | 2) =>
      linesOf(wayYard(way, leaves)).map(({ group, count, hinges }) => [group, count, hinges]);
    expect(counts(cantilever, 1)).toEqual([
      ['Leaves', 1, 'rolls'],
      ['Latches', 1, ''],
    ]);
    expect(counts(centreStop, 2)).toEqual([
      ['Leaves', 1, 'right'],
      ['Leaves', 1, 'left'],
      ['Hinges', 4, ''],
      ['Latches', 2, ''],
    ]);
    expect(counts(gap, 1)).toEqual([]);
  });

  it('[D53] says of each part whether it fits, and lists apart what does not', () => {
    const id = Object.values(yard.gates[walk]?.leaves ?? {})[0]?.hinge;
    if (id === undefined || id === null) throw new Error('expected a hinge');
    const pipe = { label: '1-5/8', od: inches(1.66), wall: inches(0.1) };
    const hinges = (post: number, frame: number) => {
      const range = (od: number) => ({ low: inches(od), high: inches(od) });
      const fits = { post: range(post), frame: range(frame) };
      const site = Object.keys(yard.gates[drive]?.leaves ?? {}).reduce(
        (so, leaf) => setGateLeaf(so, drive, leaf as LeafId, { frame: pipe }),
        changeHardware(yard, id, { fits }),
      );
      return linesOf(site)
        .filter(({ group }) => group === 'Hinges')
        .map(({ count, fit, gates }) => [count, fit, gates]);
    };
    // the gate posts of the yard are of 2.875 in, and nobody has said of what the walk gate's frame is
    expect(hinges(2.875, 1.66)).toEqual([
      [4, 'yes', 'Drive gate'],
      [2, 'not known: measure', 'Walk gate'],
    ]);
    expect(hinges(4, 1.66)).toEqual([
      [
        4,
        'DOES NOT FIT: the post of leaf 1 is 2.875", made for 4.000"; the post of leaf 2 is 2.875", made for 4.000"',
        'Drive gate',
      ],
      [2, 'DOES NOT FIT: the hinge post is 2.875", made for 4.000"', 'Walk gate'],
    ]);
  });

  it('[D53] a part that fits is not told of for another that does not', () => {
    const [one = 'leaf:none'] = Object.keys(yard.gates[drive]?.leaves ?? {}) as LeafId[];
    const own = yard.gates[drive]?.leaves[one]?.hinge ?? 'hardware:none';
    const part = yard.hardware[own];
    if (part === undefined) throw new Error('expected a hinge');
    const frame = { low: inches(1), high: inches(2) };
    const made = (od: number) => ({ post: { low: inches(od), high: inches(od) }, frame });
    const stocked = addHardware(yard, 'hardware:band', {
      ...part,
      label: 'band',
      fits: made(2.875),
    });
    const site = setGateLeaf(changeHardware(stocked, own, { fits: made(4) }), drive, one, {
      hinge: 'hardware:band',
    });
    const told = linesOf(site).filter(({ group }) => group === 'Hinges');
    expect(told.map(({ count, item, fit }) => [count, item, fit])).toEqual([
      [2, 'band', 'not known: measure'],
      [2, 'hinge', 'DOES NOT FIT: the post of leaf 2 is 2.875", made for 4.000"'],
      [2, 'hinge', 'DOES NOT FIT: the hinge post is 2.875", made for 4.000"'],
    ]);
  });

  it.each(sampleYards)('[D46] counts for $name what the load list counts', ({ site, layout }) => {
    const total = (group: string) =>
      orderLines(site, layout).reduce(
        (so, line) => so + (line.group === group ? line.count : 0),
        0,
      );
    const loaded = (begins: string) =>
      loadLines(site).reduce(
        (so, { item, count }) => so + (item.startsWith(begins) ? count : 0),
        0,
      );
    expect(total('Leaves')).toBe(loaded('Gate leaf'));
    expect(total('Hinges')).toBe(loaded('Hinge set'));
    expect(total('Latches')).toBe(loaded('Latch'));
  });
});
