import { heldBetween } from '../../engine/heldBetween.ts';
import { describe, expect, it } from 'vitest';
import type { Input } from '../../../src/editor/input.ts';
import { select } from '../../../src/editor/tools/select/select.ts';
import type { Layout } from '../../../src/engine/layout.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import { openDocument } from '../../../src/site/openDocument.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { closeLine } from '../../../src/site/edits/closeLine.ts';
import { removeVertex } from '../../../src/site/edits/removeVertex.ts';
import { setHook } from '../../../src/site/edits/setHook.ts';
import { extendLine } from '../../../src/site/edits/extendLine.ts';
import type { Site } from '../../../src/site/site.ts';
import type { Selection } from '../../../src/store/selection.ts';
import { inches } from '../../../src/units/inches.ts';
import { radians } from '../../../src/units/radians.ts';
import { deskFor, drive, driven, emptyLayout, move, press, release, typed } from '../drive.ts';
import { gatedYard } from '../gatedYard.ts';
import { yard } from '../yard.ts';

const start = (site: Site, selection: Selection = null) => ({
  ...driven(select, site),
  selection,
});

const dragBy = (from: readonly [number, number], to: readonly [number, number]): Input[] => [
  press(...from),
  move((from[0] + to[0]) / 2, (from[1] + to[1]) / 2),
  move(...to),
  release(...to),
];

const at = (site: Site, id: `mark:${string}`) => [site.marks[id]?.x, site.marks[id]?.y];
const nudge = (x: number, y: number): Input => ({ do: 'nudge', x: inches(x), y: inches(y) });

/** A layout in which the gate of the yard stands in its first leg, its middle `along` from x = 360. */
const gateAt = (along: number): Layout => ({
  ...emptyLayout,
  gates: {
    'gate:1': {
      id: 'gate:1',
      line: 'line:fence',
      placed: true,
      opening: heldBetween(44, 45, 44.5),
      stands: inches(44.5),
      posts: null,
      start: { x: 360 + along - 23.4375, y: 0 },
      end: { x: 360 + along + 23.4375, y: 0 },
      middle: { x: 360 + along, y: 0 },
      bearing: radians(0),
      leaves: [],
      slides: [],
      stop: null,
      receiver: null,
    },
  },
});

describe('select', () => {
  it('[E9] a mark let go on another one is joined to it; with snapping off it stays its own', () => {
    const ends = dragBy([840, -480], [2, 238]);
    const aiming = drive(select, start(yard), ends.slice(0, -1));
    expect(select.prompt(aiming.state, deskFor(aiming.site))).toBe('Let go to join the two marks');
    const joined = drive(select, aiming, ends.slice(-1));
    expect(joined.labels).toEqual(['Join marks']);
    expect(joined.selection).toEqual({ kind: 'mark', id: 'mark:house4' });
    expect('mark:fence3' in joined.site.marks).toBe(false);
    expect(joined.site.lines['line:fence']?.path['vertex:fence3']?.mark).toBe('mark:house4');
    expect(openDocument(joined.site).ok).toBe(true);
    const apart = drive(
      select,
      start(yard),
      ends.map((input) => ('at' in input ? { ...input, free: true } : input)),
    );
    expect(apart.labels).toEqual(['Move mark']);
    expect(at(apart.site, 'mark:fence3')).toEqual([2, 238]);
  });

  it('[E9] a tap on what is selected brings up what lies under it, which then can be dragged', () => {
    const tap = [press(600, 3), release(600, 3)];
    const lot = addFeature(
      yard,
      { kind: 'boundary', label: '', closed: false, setback: inches(0) },
      [
        { x: 500, y: 4 },
        { x: 700, y: 4 },
      ],
    );
    const leg = { kind: 'leg', line: 'line:fence', id: 'vertex:fence1' };
    const once = drive(select, start(lot), tap);
    expect(once.selection).toEqual(leg);
    expect(select.prompt(once.state, deskFor(lot, { selection: once.selection }))).toMatch(
      /^Drag the leg, or tap again for what is under it$/,
    );
    const twice = drive(select, once, tap);
    expect(twice.selection).toEqual({ kind: 'feature', id: 'feature:1' });
    const dragged = drive(select, twice, dragBy([600, 3], [600, 90]));
    expect(dragged.labels).toEqual(['Move boundary']);
    expect(dragged.site.lines).toBe(lot.lines);
    expect(drive(select, twice, tap).selection).toEqual(leg);
  });

  it('[E9] marks that cannot be joined stay where they were, and one line says why', () => {
    const site = removeVertex(yard, 'line:fence', 'vertex:fence3');
    const refused = drive(select, start(site), dragBy([840, 0], [361, 1]));
    expect(refused.say).toMatch(/two ends of one leg/);
    expect([refused.labels, refused.draft, refused.state.is]).toEqual([[], null, 'idle']);
  });

  it('[E9] a press selects what is hit, a press on open ground nothing', () => {
    const one = drive(select, start(yard), [press(600, 3), release(600, 3)]);
    expect(one.selection).toEqual({ kind: 'leg', line: 'line:fence', id: 'vertex:fence1' });
    expect([one.state.is, one.labels]).toEqual(['idle', []]);
    expect(drive(select, one, [press(600, -400)]).selection).toBeNull();
    expect(select.prompt(one.state, deskFor(yard, { selection: one.selection }))).toBe(
      'Drag the leg to move it',
    );
  });

  it('[E9] idle, held, dragging: a drag shows drafts and is one commit', () => {
    const held = drive(select, start(yard), [press(838, -478)]);
    expect(held.state.is).toBe('held');
    const still = drive(select, held, [move(840, -479)]);
    expect([still.state.is, still.draft]).toEqual(['held', null]);
    const dragging = drive(select, still, [move(700, -600)]);
    expect(dragging.state.is).toBe('dragging');
    expect(dragging.draft && at(dragging.draft, 'mark:fence3')).toEqual([700, -600]);
    expect([dragging.site, dragging.labels]).toEqual([yard, []]);
    const done = drive(select, dragging, [move(600, -700), release(600, -700)]);
    expect([done.state.is, done.labels]).toEqual(['idle', ['Move mark']]);
    expect(at(done.site, 'mark:fence3')).toEqual([600, -700]);
  });

  it('[E9] leaving drops the drag, and what was selected after it', () => {
    const dragging = drive(select, start(yard), [press(838, -478), move(700, -600)]);
    const left = drive(select, dragging, [{ do: 'leave' }]);
    expect([left.state.is, left.draft, left.site]).toEqual(['idle', null, yard]);
    expect(left.selection).toEqual({ kind: 'mark', id: 'mark:fence3' });
    expect(drive(select, left, [{ do: 'leave' }]).selection).toBeNull();
    expect(drive(select, left, [release(700, -600)]).labels).toEqual([]);
  });

  it('[E9] a mark slides along its legs and snaps as when it was drawn', () => {
    const { site, state } = drive(select, start(yard), dragBy([840, -480], [843, -300]));
    expect(at(site, 'mark:fence3')).toEqual([840, -300]);
    expect(state.is).toBe('idle');
    const onto = drive(select, start(yard), dragBy([840, -480], [3, -897]));
    expect(at(onto.site, 'mark:fence3')).toEqual([3, -900]);
  });

  it('[E9] a leg moves square to itself or along itself, and never a house with it', () => {
    const { site } = drive(select, start(yard), dragBy([840, -200], [940, -203]));
    expect(at(site, 'mark:fence2')).toEqual([940, 0]);
    expect(at(site, 'mark:fence3')).toEqual([940, -480]);
    const first = drive(select, start(yard), dragBy([600, 0], [602, 96]));
    expect(at(first.site, 'mark:fence2')).toEqual([840, 96]);
    expect(first.site.marks['mark:house2']).toBe(yard.marks['mark:house2']);
  });

  it('[E9] a feature moves with what stands on its marks', () => {
    const { site, labels } = drive(select, start(yard), dragBy([180, 120], [190, 220]));
    expect(labels).toEqual(['Move building']);
    expect(at(site, 'mark:house1')).toEqual([10, 100]);
    expect(at(site, 'mark:house2')).toEqual([370, 100]);
    expect(legsOf(site.lines['line:fence'] ?? { path: {}, closed: false })[0]?.start).toBe(
      'mark:house2',
    );
  });

  it('[E9] a gate runs along its line, measured from the end that it was measured from', () => {
    const drag = (from: 'start' | 'end' | 'middle', offset: number, by: number) => {
      const along = { start: offset + 23.4375, end: 480 - offset - 23.4375, middle: 240 + offset };
      const layout = gateAt(along[from]);
      const x = 360 + along[from];
      const inputs = dragBy([x + 5, 2], [x + 5 + by, 30]);
      return drive(select, start(gatedYard({ from, offset })), inputs, () => layout).site.gates[
        'gate:1'
      ]?.anchor;
    };
    expect(drag('start', 100, 50)).toEqual({ from: 'start', offset: 150 });
    expect(drag('end', 100, 50)).toEqual({ from: 'end', offset: 50 });
    expect(drag('middle', 0, 50)).toEqual({ from: 'middle', offset: 50 });
    expect(drag('start', 100, -99)).toEqual({ from: 'start', offset: 0 });
    expect(drag('start', 100, 350)?.offset).toBeLessThanOrEqual(480 - 46.875);
  });

  it('[E9] a gate dragged round a corner goes on to the next leg', () => {
    const layout = () => gateAt(240);
    const site = gatedYard({ from: 'middle', offset: 0 });
    const round = drive(select, start(site), dragBy([600, 0], [850, -200]), layout).site;
    expect(round.gates['gate:1']).toMatchObject({
      leg: 'vertex:fence2',
      anchor: { from: 'middle', offset: -40 },
    });
    expect(openDocument(round).ok).toBe(true);
  });

  it('[E9] keys nudge what is selected', () => {
    const mark = drive(select, start(yard, { kind: 'mark', id: 'mark:fence3' }), [nudge(0, 0.5)]);
    expect(at(mark.site, 'mark:fence3')).toEqual([840, -479.5]);
    expect(mark.labels).toEqual(['Move mark']);
    const site = gatedYard({ from: 'end', offset: 20 });
    const gate = drive(select, start(site, { kind: 'gate', id: 'gate:1' }), [nudge(1 / 16, 9)]);
    expect(gate.site.gates['gate:1']?.anchor).toEqual({ from: 'end', offset: 20 - 1 / 16 });
    const far = drive(select, start(site, { kind: 'gate', id: 'gate:1' }), [nudge(500, 0)]);
    expect(far.site.gates['gate:1']?.anchor).toEqual({ from: 'end', offset: 0 });
    const line = drive(select, start(yard, { kind: 'line', id: 'line:fence' }), [nudge(12, 0)]);
    expect(at(line.site, 'mark:fence2')).toEqual([852, 0]);
    expect(at(line.site, 'mark:house2')).toEqual([360, 0]);
    expect(drive(select, start(yard), [nudge(1, 0)]).say).toBe(
      'Nothing is selected: expected something to move',
    );
  });

  it('[E9] a leg whose marks are all held says so', () => {
    const drawn: Site = {
      ...yard,
      lines: {
        'line:wall': {
          label: '',
          spec: 'spec:invented',
          closed: false,
          hook: 'start',
          stepped: {},
          curved: {},
          walls: {},
          follows: null,
          guards: null,
          path: {
            'vertex:w1': { mark: 'mark:lot1', order: 'a0' },
            'vertex:w2': { mark: 'mark:lot2', order: 'a1' },
          },
        },
      },
    };
    const { say, labels, draft } = drive(select, start(drawn), [press(0, -900), move(0, -800)]);
    expect(say).toMatch(/^Nothing moves: /);
    expect([labels, draft]).toEqual([[], null]);
  });

  it('[E9] a length typed for a selected leg is its length', () => {
    const leg: Selection = { kind: 'leg', line: 'line:fence', id: 'vertex:fence2' };
    const { site, labels } = drive(select, start(yard, leg), [typed(120.5)]);
    expect(at(site, 'mark:fence3')).toEqual([840, -120.5]);
    expect(labels).toEqual(['Set leg length']);
    expect(drive(select, start(yard, leg), [typed(-1)]).say).toBe(
      'Length -1": expected more than 0',
    );
    expect(drive(select, start(yard), [typed(12)]).say).toBe('Select a leg to type its length');
  });
});

describe('select erases', () => {
  const erase = (site: Site, selection: Selection) =>
    drive(select, start(site, selection), [{ do: 'erase' }]);
  const marksOf = (site: Site) =>
    Object.values(site.lines).map((line) => legsOf(line).map((leg) => [leg.start, leg.end]));

  it('[E10] a gate, a feature and a line go, with the marks that nothing else stands on', () => {
    const site = gatedYard({ from: 'start', offset: 50 });
    const gate = erase(site, { kind: 'gate', id: 'gate:1' });
    expect([gate.site.gates, gate.labels, gate.selection]).toEqual([{}, ['Erase gate'], null]);
    const house = erase(site, { kind: 'feature', id: 'feature:house' });
    expect(Object.keys(house.site.marks).filter((id) => id.startsWith('mark:house'))).toEqual([
      'mark:house2',
    ]);
    const line = erase(site, { kind: 'line', id: 'line:fence' }).site;
    expect([Object.keys(line.lines), Object.keys(line.gates)]).toEqual([[], []]);
    expect(Object.keys(line.marks)).not.toContain('mark:fence2');
  });

  it('[E10] a leg goes and what is left on either side stays with its gates', () => {
    const hooked = setHook(gatedYard({ from: 'end', offset: 60 }), 'line:fence', 'end');
    const long = extendLine(hooked, 'line:fence', { x: 400, y: -480 });
    const { site } = erase(long, { kind: 'leg', line: 'line:fence', id: 'vertex:fence2' });
    expect(marksOf(site)).toEqual([[['mark:house2', 'mark:fence2']], [['mark:fence3', 'mark:1']]]);
    const gate = site.gates['gate:1'];
    const line = gate && site.lines[gate.line];
    expect(gate?.anchor).toEqual({ from: 'end', offset: 60 });
    expect(line && legsOf(line)[0]).toMatchObject({ id: gate?.leg, start: 'mark:house2' });
    expect(openDocument(site).ok).toBe(true);
    for (const { label, hook, spec } of Object.values(site.lines)) {
      expect([label, hook, spec]).toEqual(['Back fence', 'end', 'spec:invented']);
    }
    const gone = erase(long, { kind: 'leg', line: 'line:fence', id: 'vertex:fence1' }).site;
    expect(Object.keys(gone.gates)).toEqual([]);
    expect(marksOf(gone)).toHaveLength(1);
  });

  it('[E10] a closed line opens where its leg goes', () => {
    const site = closeLine(gatedYard({ from: 'end', offset: 60 }), 'line:fence');
    const open = erase(site, { kind: 'leg', line: 'line:fence', id: 'vertex:fence2' }).site;
    expect(marksOf(open)).toEqual([
      [
        ['mark:fence3', 'mark:house2'],
        ['mark:house2', 'mark:fence2'],
      ],
    ]);
    expect(Object.keys(open.gates)).toEqual(['gate:1']);
    expect(openDocument(open).ok).toBe(true);
  });

  it('[E10] a mark goes out of its line, a corner out of its house while three are left', () => {
    const { site } = erase(yard, { kind: 'mark', id: 'mark:fence2' });
    expect(marksOf(site)).toEqual([[['mark:house2', 'mark:fence3']]]);
    expect(marksOf(erase(site, { kind: 'mark', id: 'mark:fence3' }).site)).toEqual([]);
    const without = erase(yard, { kind: 'mark', id: 'mark:house1' });
    expect(Object.keys(yard.features['feature:house'] ?? {})).toContain('path');
    expect('mark:house1' in without.site.marks).toBe(false);
    expect(without.labels).toEqual(['Erase mark']);
    const triangle = erase(without.site, { kind: 'mark', id: 'mark:house3' });
    expect(triangle.say).toBe('A building needs 3 marks: erase the building instead');
    const shared = erase(yard, { kind: 'mark', id: 'mark:house2' });
    expect(shared.say).toMatch(/^Several things meet at this mark/);
    expect(erase(yard, { kind: 'mark', id: 'mark:tree1' }).say).toMatch(/erase that instead$/);
    expect([triangle.site, shared.site]).toEqual([without.site, yard]);
    expect(erase(yard, null).say).toBe('Nothing is selected: expected something to erase');
  });
});
