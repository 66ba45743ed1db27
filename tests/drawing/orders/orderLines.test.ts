import { describe, expect, it } from 'vitest';
import { orderLines } from '../../../src/drawing/orders/orderLines.ts';
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

const brief = (site: Site) =>
  orderLines(site).map(({ group, count, item, width, hinges, gates }) =>
    [group, count, item, width, hinges, gates].join(' | '),
  );

describe('orderLines', () => {
  it('[D46] counts every leaf, hinge set and latch, alike ones together', () => {
    expect(brief(yard)).toEqual([
      'Leaves | 1 | Leaf | 4\'-8 7/8" | right | Drive gate',
      'Leaves | 1 | Leaf | 4\'-8 7/8" | left | Drive gate',
      'Leaves | 1 | Leaf | 3\'-8" | right | Walk gate',
      'Hinges | 3 | hinge |  |  | Drive gate, Walk gate',
      'Latches | 1 | drop rod |  |  | Drive gate',
      'Latches | 1 | latch |  |  | Walk gate',
    ]);
  });

  it('[D46] hangs a leaf on the other side when its hinges change ends, not when the line is turned', () => {
    const sides = (site: Site) => orderLines(site).map(({ hinges }) => hinges);
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
      return orderLines(setGateLeaf(yard, walk, leaf ?? 'leaf:none', { widths }))[2]?.width;
    };
    expect(of(44.0625, null)).toBe('3\'-8 1/16"');
    expect(of(44, 44.25)).toBe('3\'-8 1/4" (top 3\'-8", bottom 3\'-8 1/4")');
    expect(Object.keys(yard.gates)).toContain(drive);
  });

  it('[D46] orders no hinges for leaves that roll, two latches at a stop, nothing for a gap', () => {
    const counts = (way: GateWay, leaves: 1 | 2) =>
      orderLines(wayYard(way, leaves)).map(({ group, count, hinges }) => [group, count, hinges]);
    expect(counts(cantilever, 1)).toEqual([
      ['Leaves', 1, 'rolls'],
      ['Latches', 1, ''],
    ]);
    expect(counts(centreStop, 2)).toEqual([
      ['Leaves', 1, 'right'],
      ['Leaves', 1, 'left'],
      ['Hinges', 2, ''],
      ['Latches', 2, ''],
    ]);
    expect(counts(gap, 1)).toEqual([]);
  });

  it.each(sampleYards)('[D46] counts for $name what the load list counts', ({ site, layout }) => {
    const total = (group: string) =>
      orderLines(site).reduce((so, line) => so + (line.group === group ? line.count : 0), 0);
    const loaded = (begins: string) =>
      layout.load.reduce((so, { item, count }) => so + (item.startsWith(begins) ? count : 0), 0);
    expect(total('Leaves')).toBe(loaded('Gate leaf'));
    expect(total('Hinges')).toBe(loaded('Hinge set'));
    expect(total('Latches')).toBe(loaded('Latch'));
  });
});
