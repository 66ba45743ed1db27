import { describe, expect, it } from 'vitest';
import { addAlternative } from '../../../src/site/edits/addAlternative.ts';
import { addGate } from '../../../src/site/edits/addGate.ts';
import { addMark } from '../../../src/site/edits/addMark.ts';
import { addObservation } from '../../../src/site/edits/addObservation.ts';
import { changeJob } from '../../../src/site/edits/changeJob.ts';
import { moveGate } from '../../../src/site/edits/moveGate.ts';
import { moveMark } from '../../../src/site/edits/moveMark.ts';
import { removeLine } from '../../../src/site/edits/removeLine.ts';
import { renameGate } from '../../../src/site/edits/renameGate.ts';
import { reverseLine } from '../../../src/site/edits/reverseLine.ts';
import { setGateLeaf } from '../../../src/site/edits/setGateLeaf.ts';
import { splitLeg } from '../../../src/site/edits/splitLeg.ts';
import { startLine } from '../../../src/site/edits/startLine.ts';
import { merged, settled, type Merge } from '../../../src/site/merge/merged.ts';
import { oneWidth } from '../../../src/site/oneWidth.ts';
import { verticesOf } from '../../../src/site/pathOrder.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { sampleSite as base } from '../sampleSite.ts';

const at = (x: number, y: number) => ({ x, y });

const toldOf = ({ conflicts }: Merge) =>
  conflicts.map(({ what, mine, theirs }) => [what, mine.words, theirs.words]);

const taking = (merge: Merge, side: 'mine' | 'theirs'): Site =>
  settled(merge, new Map(merge.conflicts.map(({ id }) => [id, side])));

const gateOn = (site: Site, offset: number): Site =>
  addGate(site, {
    label: 'New gate',
    line: 'line:1',
    leg: 'vertex:3',
    anchor: { from: 'start', offset: inches(offset) },
    leaves: [{ widths: oneWidth(inches(40)), from: 'measured', hinge: 'hardware:1' }],
    latch: 'hardware:2',
    opens: 'left',
    hingedAt: 'end',
    nominal: null,
    post: null,
  });

const pathOf = (site: Site, line: 'line:1' | 'line:2' = 'line:1') =>
  verticesOf(site.lines[line]?.path ?? {});

describe('the merge of two copies', () => {
  it('[S93] names both values of a field that both changed, and takes the one that is chosen', () => {
    const merge = merged(
      base,
      renameGate(base, 'gate:1', 'Front drive'),
      renameGate(base, 'gate:1', 'Truck gate'),
    );
    expect(toldOf(merge)).toEqual([['Gate Front drive: name', 'Front drive', 'Truck gate']]);
    expect(merge.site.gates['gate:1']?.label).toBe('Front drive');
    expect(taking(merge, 'theirs').gates['gate:1']?.label).toBe('Truck gate');
  });

  it('[S93] says where a job is as it was written, and is no place of the drawing', () => {
    const merge = merged(
      base,
      changeJob(base, { place: '12 Invented Lane' }),
      changeJob(base, { place: '14 Invented Lane' }),
    );
    expect(toldOf(merge)).toEqual([['Job: place', '12 Invented Lane', '14 Invented Lane']]);
  });

  it('[S88] has what each changed of one gate', () => {
    const merge = merged(
      base,
      renameGate(base, 'gate:1', 'Front drive'),
      setGateLeaf(base, 'gate:1', 'leaf:1', { widths: oneWidth(inches(55)) }),
    );
    expect(merge.conflicts).toEqual([]);
    expect(merge.site.gates['gate:1']?.label).toBe('Front drive');
    expect(merge.site.gates['gate:1']?.leaves['leaf:1']?.widths.top).toBe(55);
  });

  it('[S94] has two things that both copies gave one id, and what names them follows', () => {
    const mine = startLine(base, 'spec:1', at(10, 20));
    const theirs = startLine(base, 'spec:1', at(70, 90));
    expect(Object.keys(mine.lines)).toEqual(Object.keys(theirs.lines));
    const { site, conflicts } = merged(base, mine, theirs);
    expect(conflicts).toEqual([]);
    const fresh = Object.keys(site.lines).filter((id) => !Object.hasOwn(base.lines, id));
    expect(fresh).toHaveLength(2);
    const places = fresh.map((id) => {
      const [first] = verticesOf(site.lines[id as 'line:1']?.path ?? {});
      const mark = site.marks[first?.mark ?? 'mark:none'];
      return [mark?.x, mark?.y];
    });
    expect(places).toEqual(
      expect.arrayContaining([at(10, 20), at(70, 90)].map(({ x, y }) => [x, y])),
    );
  });

  it('[S95] has both corners that were put between the same two, in the order of the way', () => {
    const mine = splitLeg(base, 'line:1', 'vertex:2', at(500, -480));
    const theirs = splitLeg(base, 'line:1', 'vertex:2', at(200, -480));
    const { site, conflicts } = merged(base, mine, theirs);
    expect(conflicts).toEqual([]);
    const xs = pathOf(site).map(({ mark }) => site.marks[mark]?.x);
    expect(xs).toEqual([0, 0, 200, 500, 720, 720]);
    const orders = pathOf(site).map(({ order }) => order);
    expect(new Set(orders).size).toBe(orders.length);
  });

  it('[S95] puts a corner between its neighbours on a line that the other let run the other way', () => {
    const mine = reverseLine(base, 'line:1');
    const theirs = splitLeg(base, 'line:1', 'vertex:2', at(200, -480));
    const { site, conflicts } = merged(base, mine, theirs);
    expect(conflicts).toEqual([]);
    expect(pathOf(site).map(({ mark }) => site.marks[mark]?.x)).toEqual([720, 720, 200, 0, 0]);
  });

  it('[S96] leaves a gate where it is on the ground where the other split its leg', () => {
    const mine = moveGate(base, 'gate:1', { from: 'start', offset: inches(400) });
    const theirs = splitLeg(base, 'line:1', 'vertex:2', at(300, -480));
    const { site, conflicts } = merged(base, mine, theirs);
    expect(conflicts).toEqual([]);
    const gate = site.gates['gate:1'];
    // 400 in from the mark at x 0, so 100 in behind the new one at x 300
    expect(gate?.anchor).toEqual({ from: 'start', offset: 100 });
    const start = pathOf(site).find(({ id }) => id === gate?.leg);
    expect(site.marks[start?.mark ?? 'mark:none']?.x).toBe(300);
  });

  it('[S97] asks whether a line goes that the other hung a gate on', () => {
    const merge = merged(base, removeLine(base, 'line:1'), gateOn(base, 100));
    expect(toldOf(merge)).toEqual([
      [
        'Fence line Back: taken out or changed',
        'taken out',
        'kept, with changes to what stands on it',
      ],
    ]);
    expect(Object.keys(merge.site.lines)).toEqual(['line:2']);
    const kept = taking(merge, 'theirs');
    expect(kept.lines['line:1']).toEqual(base.lines['line:1']);
    expect(Object.values(kept.gates).map(({ label }) => label)).toContain('New gate');
  });

  it('[S97] asks whether a line goes whose marks the other moved', () => {
    const merge = merged(base, removeLine(base, 'line:1'), moveMark(base, 'mark:3', at(700, -400)));
    expect(merge.conflicts.map(({ key }) => key)).toEqual(['lines line:1']);
    expect(taking(merge, 'theirs').marks['mark:3']).toMatchObject({ x: 700, y: -400 });
  });

  it('[S98] keeps a mark that one took out with its fence and the other still uses', () => {
    const taped = addObservation(base, {
      kind: 'tape',
      from: 'mark:2',
      to: 'mark:10',
      length: inches(300),
      trust: null,
      label: '',
    });
    const gone = removeLine(base, 'line:1');
    expect(gone.marks['mark:2']).toBeUndefined();
    const { site, conflicts } = merged(base, gone, taped);
    expect(conflicts).toEqual([]);
    expect(site.marks['mark:2']).toEqual(base.marks['mark:2']);
  });

  it('[S93] calls two tapes of one length one reading that was read twice', () => {
    const tape = (from: 'mark:2' | 'mark:3', length: number): Site =>
      addObservation(base, {
        kind: 'tape',
        from,
        to: from === 'mark:2' ? 'mark:3' : 'mark:2',
        length: inches(length),
        trust: null,
        label: '',
      });
    const alike = merged(base, tape('mark:2', 720), tape('mark:3', 720));
    expect(Object.keys(alike.site.observations)).toHaveLength(1);
    expect(alike.conflicts).toEqual([]);
    const apart = merged(base, tape('mark:2', 720), tape('mark:2', 726));
    expect(toldOf(apart)).toEqual([
      [
        'Tape from 2 to 3: reading',
        expect.stringContaining(`length 60'-0"`),
        expect.stringContaining(`length 60'-6"`),
      ],
    ]);
  });

  it('[S99] keeps everything where nobody knows what both came from, and asks about every difference', () => {
    const mine = addMark(changeJob(base, { customer: 'A. Invented' }), at(3, 4));
    const theirs = addAlternative(changeJob(base, { customer: 'B. Invented' }), 'Cheaper');
    const merge = merged(null, mine, theirs);
    expect(toldOf(merge)).toEqual([['Job: customer', 'A. Invented', 'B. Invented']]);
    expect(merge.site.marks).toEqual(mine.marks);
    expect(merge.site.alternatives).toEqual(theirs.alternatives);
  });

  it('[S85] of copies that make no document together keeps one, and asks which', () => {
    const latch = base.hardware['hardware:2'];
    const spare = { ...base, hardware: { ...base.hardware, 'hardware:9': latch } } as Site;
    // one makes a hinge of the part that the other hangs its gate by as a latch
    const hinge = { ...latch, kind: 'hinge' };
    const mine = { ...spare, hardware: { ...spare.hardware, 'hardware:9': hinge } } as Site;
    const gate = { ...spare.gates['gate:2'], latch: 'hardware:9' };
    const theirs = { ...spare, gates: { ...spare.gates, 'gate:2': gate } } as Site;
    const merge = merged(spare, mine, theirs);
    expect(merge.conflicts.map(({ is }) => is)).toEqual(['not together']);
    expect(merge.conflicts[0]?.what).toContain('gates › gate:2 › latch: expected a latch');
    expect(merge.site).toEqual(mine);
    expect(taking(merge, 'theirs')).toEqual(theirs);
  });
});
