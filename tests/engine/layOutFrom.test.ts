import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutFrom, type Laying } from '../../src/engine/layOutFrom.ts';
import { layOutSite } from '../../src/engine/layOutSite.ts';
import type { Layout } from '../../src/engine/layout.ts';
import { addFeature } from '../../src/site/edits/addFeature.ts';
import { addShots } from '../../src/site/edits/addShots.ts';
import { changeFeature } from '../../src/site/edits/changeFeature.ts';
import { changeGate } from '../../src/site/edits/changeGate.ts';
import { changeHardware } from '../../src/site/edits/changeHardware.ts';
import { changeSpec } from '../../src/site/edits/changeSpec.ts';
import { moveGate } from '../../src/site/edits/moveGate.ts';
import { moveMark } from '../../src/site/edits/moveMark.ts';
import { recordAsSet } from '../../src/site/edits/recordAsSet.ts';
import { setConditions } from '../../src/site/edits/setConditions.ts';
import { setGateOpens } from '../../src/site/edits/setGateOpens.ts';
import { setGuards } from '../../src/site/edits/setGuards.ts';
import { setLegWall } from '../../src/site/edits/setLegWall.ts';
import type { Conditions } from '../../src/site/conditions.ts';
import type { FenceSpec } from '../../src/site/fenceSpec.ts';
import type { Gate } from '../../src/site/gate.ts';
import type {
  FeatureId,
  GateId,
  HardwareId,
  LineId,
  MarkId,
  SpecId,
  VertexId,
} from '../../src/site/ids.ts';
import type { Site } from '../../src/site/site.ts';
import { inches } from '../../src/units/inches.ts';
import { fromDegrees } from '../../src/units/radians.ts';
import { after, anyMove, type Move } from '../site/edits/anyEdits.ts';
import { hardware, spec } from './plainYard.ts';
import { randomSite } from './randomSite.ts';
import { twoLines } from './twoLines.ts';

const keysOf = <T extends object>(map: T) => Object.keys(map) as (keyof T)[];

const one = <T>(list: readonly T[], n: number): T => {
  const picked = list[n % list.length];
  if (picked === undefined) throw new RangeError('nothing to pick from');
  return picked;
};

const changes: readonly Partial<FenceSpec>[] = [
  { maxBay: inches(96) },
  { maxBay: inches(4) },
  { cornerAngle: fromDegrees(5) },
  { pullInterval: inches(330) },
  { pullGrade: fromDegrees(2) },
  { fabricHeight: inches(96) },
  { gapUnder: inches(0) },
  { onCurves: 'as straight' },
  {
    linePost: { label: 'thin', od: inches(1.315), wall: inches(0.065), section: 'round' as const },
  },
  {
    gatePost: { label: 'stout', od: inches(6.625), wall: inches(0.28), section: 'round' as const },
  },
  {
    terminalPost: {
      label: 'thick in the wall',
      od: inches(2),
      wall: inches(5),
      section: 'round' as const,
    },
  },
  { topRail: null, middleRail: { label: 'rail', od: inches(1.66), wall: inches(0.14) } },
  { mesh: inches(0.5), wire: inches(0.192), solid: 0.6 },
  { barbedWire: { strands: 3, arms: 'upright' }, grade: 'high strength' },
  { leastDepth: inches(60) },
];

const places: readonly Partial<Conditions>[] = [
  { wind: { speed: 150, exposure: 'D' } },
  { wind: null },
  { ice: { thickness: 1 / 8, speed: 60 } },
  { ice: null },
  { frost: inches(48) },
  { soil: 'gravel', isolated: true },
  { bays: 'by wind' },
  { bays: 'by build' },
];

const passes: readonly Partial<Gate>[] = [
  { route: 'accessible' },
  { route: 'fire' },
  { route: null },
  { powered: true },
  { powered: false },
  { latchHeight: inches(60), bottom: inches(4) },
  { threshold: inches(1) },
];

const set = (n: number) => ({
  by: 'AB',
  on: '2026-11-25',
  top: inches(40 + n),
  bottom: null,
  leans: { start: null, end: null },
  leaves: {},
  hinges: {},
  remark: '',
});

/** What the random hand does besides: specs, what was set, walls, services, roots, hardware. */
const more: Readonly<Record<string, (site: Site, move: Move) => Site>> = {
  changeSpec: (site, { pick, other }) =>
    changeSpec(site, one(keysOf(site.specs), pick) as SpecId, one(changes, other)),
  setGate: (site, { pick, other }) => {
    const id = one(keysOf(site.gates), pick) as GateId;
    return recordAsSet(site, id, other % 3 === 0 ? null : set(other));
  },
  setLegWall: (site, { pick, other }) => {
    const line = one(keysOf(site.lines), pick) as LineId;
    const leg = one(keysOf(site.lines[line]?.path ?? {}), other) as VertexId;
    const wall = {
      height: inches(24),
      width: inches(8),
      rise: inches(other % 9),
      steps: other % 3,
      set: { kind: 'cored', depth: inches(10), room: inches(0.5) },
    } as const;
    return setLegWall(site, { line, leg, wall: other % 4 === 0 ? null : wall });
  },
  service: (site, { at, other }) =>
    addFeature(
      site,
      other % 2 === 0
        ? {
            kind: 'utility',
            run: 'buried',
            label: '',
            service: 'gas',
            width: inches(2),
            tolerance: inches(18 + other),
          }
        : { kind: 'paving', label: '' },
      [at, { x: at.y, y: -at.x }, { x: -at.x, y: at.y }],
    ),
  conditions: (site, { other }) => setConditions(site, one(places, other)),
  passes: (site, { pick, other }) =>
    changeGate(site, one(keysOf(site.gates), pick) as GateId, one(passes, other)),
  guards: (site, { pick, other }) =>
    setGuards(site, one(keysOf(site.lines), pick) as LineId, other % 2 === 0 ? 'pool' : null),
  run: (site, { pick, other }) => {
    const all = keysOf(site.features).filter((id) => site.features[id]?.kind === 'utility');
    return changeFeature(site, one(all, pick) as FeatureId, {
      run: other % 2 === 0 ? 'overhead' : 'buried',
    });
  },
  opens: (site, { pick, other }) =>
    setGateOpens(site, one(keysOf(site.gates), pick) as GateId, other % 2 === 0 ? 'left' : 'right'),
  moveMarkABit: (site, { pick, at }) => {
    const id = one(keysOf(site.marks), pick) as MarkId;
    const mark = site.marks[id] ?? at;
    return moveMark(site, id, { x: mark.x + at.x / 64, y: mark.y + at.y / 64 });
  },
  hardware: (site, { pick, other }) =>
    changeHardware(site, one(keysOf(site.hardware), pick) as HardwareId, {
      takes: { low: inches(1), planned: inches(1 + other / 64), high: inches(2) },
    }),
  shotsAround: (site, { at, other }) =>
    addShots(
      site,
      [
        [-2000, -2000],
        [2000, -1900],
        [2000, 2000],
        [-1900, 2000],
        [at.x, at.y],
      ].map(([x = 0, y = 0], n) => ({ x, y, z: inches(n * other), label: '' })),
    ),
};

/** The random hand's own ids for the parts that its gates hang on, beside those of the yard. */
const stocked = (site: Site): Site => ({
  ...site,
  specs: { ...site.specs, 'spec:1': spec },
  hardware: {
    ...site.hardware,
    'hardware:1': hardware['hardware:hinge'] ?? one(Object.values(hardware), 0),
    'hardware:2': hardware['hardware:rod'] ?? one(Object.values(hardware), 0),
  },
});

const moved = (site: Site, move: Move): Site => {
  try {
    return more[move.verb]?.(site, move) ?? after(site, move);
  } catch (error) {
    if (error instanceof RangeError && !/call stack/.test(error.message)) return site;
    throw error;
  }
};

const hand = fc.oneof(
  { weight: 2, arbitrary: anyMove },
  {
    weight: 3,
    arbitrary: fc
      .tuple(anyMove, fc.constantFrom(...Object.keys(more)))
      .map(([move, verb]) => ({ ...move, verb })),
  },
);

/** A step of the hand, or so many steps back. */
const step = fc.oneof(
  { weight: 8, arbitrary: hand.map((move) => ({ move, back: 0 })) },
  { weight: 1, arbitrary: fc.integer({ min: 1, max: 4 }).map((back) => ({ move: null, back })) },
);

const objectsOf = ({ lines, gates, posts }: Layout) => ({
  runs: new Map(
    Object.values(lines).flatMap(({ runs }) => runs.map((run) => [run.id, run] as const)),
  ),
  gates: new Map(Object.entries(gates)),
  posts: new Map([...posts.values()].map((post) => [post.id, post])),
});

/** A layout with the list of its posts, each found by its id, and not how they are kept. */
const told = ({ posts, ...rest }: Layout) => ({
  ...rest,
  posts: [...posts.values()].map(({ id }) => posts.get(id)),
});

describe('layOutFrom', () => {
  it('[P24] after any edits, and back, is the same as laid out from nothing', () => {
    fc.assert(
      fc.property(randomSite, fc.array(step, { minLength: 1, maxLength: 8 }), (drawn, steps) => {
        const sites = [stocked(drawn)];
        let laying: Laying = layOutFrom(stocked(drawn), null);
        for (const { move, back } of steps) {
          const last = sites.at(-1) ?? drawn;
          const site = move === null ? (sites.at(-1 - back) ?? last) : moved(last, move);
          sites.push(site);
          laying = layOutFrom(site, laying);
          expect(told(laying.layout)).toEqual(told(layOutSite(site)));
        }
      }),
      { numRuns: 60 },
    );
  }, 120_000);

  it('[P24] from a layout of quite another site is the same as from nothing', () => {
    fc.assert(
      fc.property(randomSite, randomSite, (one_, other) => {
        expect(told(layOutFrom(other, layOutFrom(one_, null)).layout)).toEqual(
          told(layOutSite(other)),
        );
      }),
      { numRuns: 40 },
    );
  }, 60_000);

  it('[P24] of one site again is made of the very same runs, posts and gates', () => {
    fc.assert(
      fc.property(randomSite, (site) => {
        const laying = layOutFrom(site, null);
        const again = layOutFrom({ ...site }, laying);
        const [before, now] = [objectsOf(laying.layout), objectsOf(again.layout)];
        for (const kind of ['runs', 'gates', 'posts'] as const) {
          expect(now[kind].size).toBe(before[kind].size);
          for (const [id, object] of now[kind]) expect(object).toBe(before[kind].get(id as never));
        }
        expect(again.layout.posts).toBe(laying.layout.posts);
      }),
      { numRuns: 40 },
    );
  }, 60_000);

  it('[P24] holds on to no layout before the last', async () => {
    setFlagsFromString('--expose-gc');
    const collect = runInNewContext('gc') as () => void;
    const site = twoLines();
    const edited = (offset: number) =>
      moveGate(site, 'gate:1', { from: 'start', offset: inches(offset) });
    let laying: Laying = layOutFrom(site, null);
    const first = new WeakRef(laying.layout.posts);
    for (const offset of [100, 101, 102]) laying = layOutFrom(edited(offset), laying);
    // what was reached in this turn of the loop, or by code that was made fast for it, is let go some turns later
    for (let turn = 0; turn < 5; turn += 1) {
      await new Promise((resolve) => setTimeout(resolve));
      collect();
    }
    expect(first.deref()).toBeUndefined();
    expect([...laying.layout.posts.values()]).not.toHaveLength(0);
  });

  it('[P24] moving a gate keeps every other run, their posts and their gates', () => {
    const site = twoLines();
    const laying = layOutFrom(site, null);
    const edited = moveGate(site, 'gate:1', { from: 'start', offset: inches(100) });
    const [before, now] = [objectsOf(laying.layout), objectsOf(layOutFrom(edited, laying).layout)];
    const kept = [...now.runs].filter(([id, run]) => run === before.runs.get(id));
    expect(now.runs.size - kept.length).toBe(1);
    for (const [, run] of kept) {
      for (const { post } of run.posts.slice(1, -1)) {
        expect(now.posts.get(post)).toBe(before.posts.get(post));
      }
    }
    expect(now.gates.get('gate:2')).toBe(before.gates.get('gate:2'));
    expect(now.gates.get('gate:1')).not.toBe(before.gates.get('gate:1'));
  });

  it('[P24] moving a corner lays out again the two runs that meet there and no other', () => {
    const site = twoLines();
    const laying = layOutFrom(site, null);
    const path = Object.values(site.lines['line:1']?.path ?? {});
    const mark = one(path, 1).mark;
    const edited = moveMark(site, mark, { x: 600, y: 310 });
    const [before, now] = [objectsOf(laying.layout), objectsOf(layOutFrom(edited, laying).layout)];
    const changed = [...now.runs.keys()].filter((id) => now.runs.get(id) !== before.runs.get(id));
    expect(changed).toEqual([...now.runs.keys()].slice(0, 2));
  });
});
