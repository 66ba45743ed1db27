import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loaded, type Loaded } from '../load/loadLines.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Layout } from '../../../src/engine/layout.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { reverseLine } from '../../../src/site/edits/reverseLine.ts';
import { setLegWall } from '../../../src/site/edits/setLegWall.ts';
import { splitLeg } from '../../../src/site/edits/splitLeg.ts';
import type { VertexId } from '../../../src/site/ids.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import type { Site } from '../../../src/site/site.ts';
import type { WallTop } from '../../../src/site/wallTop.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, gateOn } from '../plainYard.ts';

const wall: WallTop = {
  width: inches(12),
  height: inches(24),
  rise: inches(0),
  steps: 0,
  set: { kind: 'cored', depth: inches(12), room: inches(1) },
};

const legs = (site: Site): VertexId[] =>
  Object.values(site.lines).flatMap((line) => legsOf(line).map(({ id }) => id));

const onWall = (site: Site, leg: number, top: Partial<WallTop> = {}): Site =>
  setLegWall(site, {
    line: 'line:1',
    leg: legs(site)[leg] ?? 'vertex:',
    wall: { ...wall, ...top },
  });

const straight = fence(bare, [
  [0, 0],
  [600, 0],
]);

const tops = ({ posts }: Layout) => [...posts.values()].map(({ above }) => above);

describe('fence on a wall', () => {
  it('[B3] stands in cores, whose pipe and grout are counted instead of holes and concrete', () => {
    const ground = layOutSite(straight);
    const laid = loaded(onWall(straight, 0));
    for (const { hole, od, length, above } of laid.posts.values()) {
      expect(hole).toMatchObject({ diameter: od + 1, depth: 12 });
      expect(length).toBe(above + 12);
    }
    expect(tops(laid)).toEqual(tops(ground));
    const items = laid.load.map(({ item }) => item);
    expect(items).toContain('Grout for cores');
    expect(items).not.toContain('Concrete');
    // each core: π/4 × ((od + 1)² − od²) × 12
    const grout = laid.load.find(({ item }) => item === 'Grout for cores')?.count ?? 0;
    const worked = [...laid.posts.values()].reduce(
      (sum, { od }) => sum + ((Math.PI / 4) * ((od + 1) ** 2 - od ** 2) * 12) / 1728,
      0,
    );
    expect(grout).toBeCloseTo(worked, 12);
  });

  it('[B3] on plates takes a plate a post and four anchors each, and pipe without a buried end', () => {
    const set = { kind: 'plate', side: inches(8) } as const;
    const laid = loaded(onWall(straight, 0, { set }));
    const posts = [...laid.posts.values()];
    expect(posts.every(({ length, above }) => length === above)).toBe(true);
    const counted = (start: string) =>
      laid.load.filter(({ item }) => item.startsWith(start)).reduce((n, { count }) => n + count, 0);
    expect(counted('Base plate')).toBe(posts.length);
    expect(counted('Anchor for base plates')).toBe(4 * posts.length);
    expect(counted('Concrete') + counted('Grout')).toBe(0);
  });

  it('[B4] is a run of its own, with a post where it begins', () => {
    const two = fence(bare, [
      [0, 0],
      [300, 0],
      [600, 0],
    ]);
    expect(layOutSite(two).lines['line:1']?.runs).toHaveLength(1);
    const runs = layOutSite(onWall(two, 1)).lines['line:1']?.runs ?? [];
    expect(runs.map((run) => run.wall?.height ?? null)).toEqual([null, 24]);
    const laid = loaded(onWall(two, 1));
    const between = laid.posts.get(runs[0]?.posts.at(-1)?.post ?? 'post:');
    expect(between).toMatchObject({ kind: 'bend', wall: { height: 24 } });
  });

  const gas = (site: Site): Site =>
    addFeature(
      site,
      {
        kind: 'utility',
        run: 'buried',
        label: '',
        service: 'gas',
        width: inches(2),
        tolerance: inches(18),
      },
      [
        { x: 120, y: -100 },
        { x: 120, y: 100 },
      ],
    );

  it('[B5] digs nothing while its cores end above the ground; a deeper core keeps off services', () => {
    const on = (top: Partial<WallTop>) => layOutSite(gas(onWall(straight, 0, top)));
    const stations = ({ lines }: Layout) =>
      lines['line:1']?.runs[0]?.posts.map(({ station }) => station);
    expect(stations(on({}))).toEqual([0, 120, 240, 360, 480, 600]);
    expect(stations(on({ set: { kind: 'plate', side: inches(8) } }))).toContain(120);
    const kerb = on({ height: inches(6) });
    expect(stations(kerb)).not.toContain(120);
    for (const at of stations(kerb) ?? []) expect(Math.abs(at - 120)).toBeGreaterThan(18);
  });

  it('[B6] that slopes is measured along its top', () => {
    const [run] =
      layOutSite(onWall(straight, 0, { rise: inches(250) })).lines['line:1']?.runs ?? [];
    // a 5-12-13 triangle: 250 of rise on 600 of plan is 650 along the top
    expect(run?.length).toBeCloseTo(650, 9);
    expect(run?.posts).toHaveLength(7);
    expect(run?.ground?.fences[0]?.way).toBe('follow');
  });

  it('[B6] that steps is measured level, with panels on its level parts and a post at each step', () => {
    const site = onWall(straight, 0, { rise: inches(-16), steps: 2 });
    const [run] = layOutSite(site).lines['line:1']?.runs ?? [];
    expect(run?.length).toBe(600);
    const reach = 1.45 + 2.5;
    // it falls: the lower side of a step is behind it
    const stations = run?.posts.map(({ station }) => station) ?? [];
    expect(stations).toContain(200 + reach);
    expect(stations).toContain(400 + reach);
    const [fabric] = run?.ground?.fences ?? [];
    expect(fabric?.way).toBe('wall');
    const bottoms = [...new Set(fabric?.bays.map(({ from }) => from.z))];
    // 24 over the lower end: 40, 32 and 24
    expect(bottoms).toEqual([40, 32, 24]);
  });

  it('[B6] no post but one at a mark stands nearer to a step than it may', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 6 }),
        fc.integer({ min: -40, max: 40 }),
        fc.integer({ min: 480, max: 3000 }),
        (steps, rise, length) => {
          const line = fence(bare, [
            [0, 0],
            [length, 0],
          ]);
          const site = onWall(line, 0, { rise: inches(rise), steps });
          const [run] = layOutSite(site).lines['line:1']?.runs ?? [];
          const inside = run?.posts.slice(1, -1).map(({ station }) => station) ?? [];
          const risers = rise === 0 ? [] : Array.from({ length: steps }, (_, n) => n + 1);
          for (const n of risers) {
            const at = (n * length) / (steps + 1);
            for (const station of inside) {
              expect(Math.abs(station - at)).toBeGreaterThan(1.45 + 2.5 - 1e-6);
            }
          }
        },
      ),
    );
  });

  it('[B7] drawn from its other end has the same posts and the same load', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 5 }),
        fc.integer({ min: -60, max: 60 }),
        (steps, rise) => {
          const site = onWall(straight, 0, { rise: inches(rise), steps });
          const [there, back] = [site, reverseLine(site, 'line:1')].map(loaded);
          expect(reverseLine(reverseLine(site, 'line:1'), 'line:1')).toEqual(site);
          const counts = (laid?: Loaded) => laid?.load.map(({ item, count }) => [item, count]);
          expect(counts(back)?.map(([item]) => item)).toEqual(counts(there)?.map(([item]) => item));
          counts(back)?.forEach(([, count], n) => {
            expect(count).toBeCloseTo(Number(counts(there)?.[n]?.[1]), 6);
          });
        },
      ),
    );
  });

  it('[B7] that is split keeps its rise and its steps', () => {
    const site = onWall(straight, 0, { rise: inches(24), steps: 3 });
    const parts = Object.values(
      splitLeg(site, 'line:1', legs(site)[0] ?? 'vertex:', { x: 200, y: 0 }).lines,
    ).flatMap(({ walls }) => Object.values(walls));
    expect(parts.map(({ rise, steps }) => [rise, steps])).toEqual([
      [8, 1],
      [16, 2],
    ]);
  });
});

describe('what a wall asks for', () => {
  const flagsOf = (site: Site) =>
    layOutSite(site).flags.filter(({ rule }) => /wall|step/.test(rule));

  it('[F28] defers to an engineer, and says no more where there is room', () => {
    const flags = flagsOf(onWall(straight, 0));
    expect(flags.map(({ level }) => level)).toEqual(['caution']);
    expect(flags[0]?.message).toMatch(/licensed engineer/);
  });

  it('[F28] tells of a core with too little concrete beside it, and of a plate that overhangs', () => {
    const narrow = flagsOf(onWall(straight, 0, { width: inches(8) }));
    // (8 - 3 3/8) / 2 is 2 5/16, to the eighth of the yard's tape 2 3/8
    expect(narrow[0]?.message).toMatch(
      /^The core of post A leaves 2 3\/8" of concrete on each side/,
    );
    const set = { kind: 'plate', side: inches(8) } as const;
    expect(flagsOf(onWall(straight, 0, { set, width: inches(8) }))).toHaveLength(1);
    const over = flagsOf(onWall(straight, 0, { set, width: inches(6) }));
    expect(over[0]?.message).toMatch(/^The plate of post A is 8" wide: expected no more than/);
  });

  it('[F28] tells of a gate post that stands too near to a step', () => {
    const anchor = { from: 'start', offset: 198 } as const;
    const clear = flagsOf(onWall(gateOn(straight, 0, anchor), 0, { steps: 2 }));
    expect(clear.map(({ rule }) => rule)).toEqual(['fence on a wall']);
    const near = flagsOf(onWall(gateOn(straight, 0, anchor), 0, { steps: 2, rise: inches(9) }));
    expect(near[0]?.message).toMatch(/stands .* too near to a step of its wall/);
  });

  it('[F29] tells of the gap under fabric over short level parts', () => {
    const steep = onWall(straight, 0, { rise: inches(60), steps: 12 });
    expect(layOutSite(steep).flags.map(({ rule }) => rule)).toContain('gap under the fabric');
    const long = onWall(straight, 0, { rise: inches(12), steps: 2 });
    const gaps = layOutSite(long).flags.filter(({ rule }) => rule === 'gap under the fabric');
    // the fabric hangs over the lower part for as long as a post stays off a step
    expect(gaps[0]?.message).toMatch(/6" below the fabric/);
  });
});
