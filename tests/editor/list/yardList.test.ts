import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { edgesOf } from '../../../src/editor/edges.ts';
import { heard } from '../../../src/editor/list/heard.ts';
import { withAllRows } from '../../../src/editor/list/listRow.ts';
import { rowOf } from '../../../src/editor/list/rowOf.ts';
import { toldPlace } from '../../../src/editor/list/toldPlace.ts';
import { yardList } from '../../../src/editor/list/yardList.ts';
import { hits } from '../../../src/editor/hit.ts';
import { toldGate } from '../../../src/editor/plannedGate.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { addMark } from '../../../src/site/edits/addMark.ts';
import { addPin } from '../../../src/site/edits/addPin.ts';
import { addShots } from '../../../src/site/edits/addShots.ts';
import { curveLeg } from '../../../src/site/edits/curveLeg.ts';
import { setTape } from '../../../src/site/edits/setTape.ts';
import type { LineId } from '../../../src/site/ids.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import type { Site } from '../../../src/site/site.ts';
import type { Selection } from '../../../src/store/selection.ts';
import { inches } from '../../../src/units/inches.ts';
import { fromDegrees } from '../../../src/units/radians.ts';
import { bare, fence, gateOn } from '../../engine/plainYard.ts';
import { samplePlans } from '../../store/samplePlans.ts';

/** 40 ft east and 30 ft south, with a gate in the middle of the first leg. */
const fenced = gateOn(
  fence(bare, [
    [0, 0],
    [480, 0],
    [480, -360],
  ]),
  0,
  { from: 'middle', offset: 0 },
);

const [line] = Object.keys(fenced.lines) as [LineId];
const legs = legsOf(fenced.lines[line] ?? { path: {}, closed: false });
const [first] = legs;
if (first === undefined) throw new Error('expected a leg');

const full = [
  (site: Site) => curveLeg(site, { line, leg: legs[1]?.id ?? first.id, bow: 36 }),
  (site: Site) =>
    addPin(site, {
      line,
      leg: first.id,
      anchor: { from: 'start', offset: inches(60) },
      holds: { kind: 'clear', reach: inches(12) },
    }),
  (site: Site) =>
    addFeature(site, { kind: 'building', label: 'House' }, [
      { x: 0, y: 200 },
      { x: 240, y: 200 },
      { x: 240, y: 400 },
    ]),
  (site: Site) => addFeature(site, { kind: 'note', label: '', text: 'Dog' }, [{ x: -90, y: 40 }]),
  (site: Site) => addShots(site, [{ x: 50, y: 700, z: inches(3), label: '' }]),
  (site: Site) => addMark(site, { x: -300, y: -300 }),
  (site: Site) => setTape(site, first.start, first.end, inches(480)),
].reduce((site, edit) => edit(site), fenced);

const rowsOf = (site: Site) =>
  yardList(site, layOutSite(site)).flatMap(({ rows }) => rows.flatMap(withAllRows));
const wordsOf = (site: Site): string[] => rowsOf(site).map(({ words }) => words);
const told = (site: Site, selection: Selection = null) => ({
  groups: yardList(site, layOutSite(site)),
  selection,
});

describe('the yard as a list', () => {
  it('[E70] says of a leg its marks, its length, its direction, its bow, and what stands on it', () => {
    const words = wordsOf(full);
    expect(words).toContain(`Leg 1, post A to post D: 40'-0", going east, 90°`);
    expect(words.find((text) => text.startsWith('Leg 2'))).toMatch(
      /going south, 180°, bowed 3'-0" to the left$/,
    );
    expect(words.find((text) => text.startsWith('Gate '))).toMatch(
      /opening 4'-0", 1 leaf that swings, to the left, in the middle of the leg$/,
    );
    expect(words).toContain(`Ground kept clear, 5'-0" from post A, 1'-0" to each side`);
  });

  it('[E70] has a row for all that a hand can select, and each selects that', () => {
    const layout = layOutSite(full);
    const groups = yardList(full, layout);
    const reach = inches(4);
    const grid = Array.from({ length: 60 }, (_, n) => -400 + n * 20);
    const probes = [
      ...grid.flatMap((x) => grid.map((y) => ({ x, y }))),
      ...[...layout.posts.values()].map(({ at }) => at),
      ...Object.values(full.shots).map(({ x, y }) => ({ x, y })),
    ];
    const met = probes.flatMap((at) => hits(full, layout, { at, reach }));
    expect(new Set(met.map(({ kind }) => kind))).toEqual(
      new Set(['gate', 'mark', 'post', 'shot', 'pin', 'leg', 'feature']),
    );
    for (const thing of met) expect(rowOf(groups, thing)?.selection).toMatchObject(thing);
  });

  it('[E70] names no row twice, and is empty for an empty yard', () => {
    const keys = rowsOf(full).map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    expect(yardList(bare, layOutSite(bare)).filter(({ key }) => key !== 'flags')).toEqual([]);
  });
});

describe('what is heard', () => {
  it('[E71] tells an edit by its label, names and figures, and how many posts there are now', () => {
    const longer = fence(fenced, [
      [0, 300],
      [120, 300],
    ]);
    const line2 = heard(told(fenced), told(longer, { kind: 'line', id: 'line:2' }), 'Draw fence');
    expect(line2).toContain(`Draw fence. New: Fence line 2: 10'-0" of open fence, 1 leg`);
    expect(line2).toContain(`Leg 1, post`);
    expect(line2).toMatch(/\d+ posts/);
    expect(line2).not.toContain('Selected');
  });

  it('[E71] tells what is selected, and that nothing is', () => {
    const mark: Selection = { kind: 'mark', id: first.start };
    expect(heard(told(fenced), told(fenced, mark), null)).toBe(
      `Selected: Post A: 0" east, 0" north`,
    );
    expect(heard(told(fenced, mark), told(fenced), null)).toBe('Nothing is selected');
    expect(heard(told(fenced, mark), told(fenced, mark), null)).toBe('');
  });

  it('[E71] does not tell a leg again because a gate has lettered its posts anew', () => {
    const plain = fence(bare, [
      [0, 0],
      [480, 0],
      [480, -360],
    ]);
    const placed = heard(told(plain), told(fenced, { kind: 'gate', id: 'gate:1' }), 'Place gate');
    expect(placed).toMatch(/^Place gate\. New: Gate /);
    expect(placed).not.toContain('Now:');
  });

  it('[E71] names three things at most and counts the others', () => {
    const gone = heard(told(full), told(bare), 'Start anew');
    expect(gone).toMatch(/Gone: [^.]*; and \d+ more/);
  });
});

describe('a place that is told', () => {
  const edge = edgesOf(fenced)[0];
  if (edge === undefined) throw new Error('expected an edge');

  it('[E72] lies at a mark, so far from one, so far along a leg, or east and north', () => {
    const at = (...args: Parameters<typeof toldPlace>) => toldPlace(...args);
    expect(at(fenced, { by: 'mark', mark: first.end })).toEqual({
      ok: true,
      value: { x: 480, y: 0 },
    });
    const way = { by: 'way', mark: first.end, far: inches(120), bearing: fromDegrees(90) } as const;
    expect(at(fenced, way)).toEqual({ ok: true, value: { x: 480, y: 120 } });
    const on = { by: 'edge', edge, anchor: { from: 'end', offset: inches(100) } } as const;
    expect(at(fenced, on)).toEqual({ ok: true, value: { x: 380, y: 0 } });
    expect(at(fenced, { by: 'figures', x: inches(7), y: inches(-9) })).toEqual({
      ok: true,
      value: { x: 7, y: -9 },
    });
  });

  it('[E72] off its leg is refused in one line, with what was expected', () => {
    const on = { by: 'edge', edge, anchor: { from: 'start', offset: inches(481) } } as const;
    expect(toldPlace(fenced, on)).toEqual({
      ok: false,
      reason: `40'-1" is off it: expected at most 40'-0"`,
    });
  });

  it('[E72] a gate stands exactly where it was told, from the mark that was named', () => {
    const anchor = { from: 'end', offset: inches(31.25) } as const;
    const leg = legs[1]?.id ?? first.id;
    const planned = toldGate(fenced, samplePlans.gate, { line, leg }, anchor);
    const gate = planned?.site.gates[planned.id];
    expect(gate).toMatchObject({ line, leg, anchor });
    const laid = planned === null ? undefined : layOutSite(planned.site).gates[planned.id];
    expect(laid?.end.y).toBeCloseTo(-360 + 31.25, 9);
  });
});
