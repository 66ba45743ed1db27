import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '../../../src/geometry/distance.ts';
import { offers, type Becomes } from '../../../src/site/becomes.ts';
import { bringIn, type BringChoices } from '../../../src/site/edits/bringIn.ts';
import { addMark } from '../../../src/site/edits/addMark.ts';
import { emptySite } from '../../../src/site/emptySite.ts';
import type { FenceLine } from '../../../src/site/fenceLine.ts';
import type { Found, FoundGroup, FoundPath } from '../../../src/site/found.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { verticesOf } from '../../../src/site/pathOrder.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { samplePlans } from '../../store/samplePlans.ts';
import { sampleSite } from '../sampleSite.ts';

const blank = emptySite({ specs: {}, hardware: {} });
const [specId, spec] = Object.entries(sampleSite.specs)[0] ?? [];
const fence = { id: specId as `spec:${string}`, spec: spec as Site['specs'][`spec:${string}`] };

const choices = (becomes: Readonly<Record<string, Becomes>>): BringChoices => ({
  becomes,
  fence,
  utility: { width: inches(2), tolerance: inches(18) },
  heights: samplePlans.heights,
  chord: inches(1),
});
const found = (...groups: readonly FoundGroup[]): Found => ({
  groups,
  told: [],
  refused: [],
  origin: null,
});
const path = (
  points: readonly (readonly [number, number])[],
  closed: boolean,
  name = '',
): FoundPath => ({
  name,
  points: points.map(([x, y]) => ({ x, y })),
  bows: points.map(() => 0),
  closed,
});
const lot = path(
  [
    [0, 0],
    [120, 0],
    [120, 240],
    [0, 240],
  ],
  true,
  'Lot 7',
);
const areas: FoundGroup = { key: 'a', layer: 'A', shape: 'areas', paths: [lot] };
const lines: FoundGroup = {
  key: 'l',
  layer: 'L',
  shape: 'lines',
  paths: [
    path(
      [
        [120, 0],
        [300, 0],
        [300, 60],
      ],
      false,
      'old fence',
    ),
  ],
};

describe('what a file has, brought onto a site', () => {
  it('[S44] becomes what a person chose, with its names', () => {
    const site = bringIn(blank, found(areas, lines), choices({ a: 'boundary', l: 'utility, gas' }));
    expect(Object.values(site.features)).toMatchObject([
      { kind: 'boundary', label: 'Lot 7', closed: true, setback: 0 },
      {
        kind: 'utility',
        run: 'buried',
        label: 'old fence',
        service: 'gas',
        width: 2,
        tolerance: 18,
      },
    ]);
    const pool = bringIn(blank, found(areas, lines), choices({ a: 'pool', l: 'leave out' }));
    expect(Object.values(pool.features)).toMatchObject([{ kind: 'pool', label: 'Lot 7' }]);
    const fenced = bringIn(blank, found(areas, lines), choices({ l: 'fence line' }));
    expect(Object.values(fenced.lines)).toMatchObject([
      { label: 'old fence', spec: specId, closed: false },
    ]);
    expect(fenced.specs).toEqual({ [fence.id]: fence.spec });
  });

  it('[S44] points on one spot are one mark, of the things of the file and of the site', () => {
    const marked = addMark(blank, { x: 120, y: 240 }, 'pin');
    const site = bringIn(marked, found(areas, lines), choices({ a: 'boundary', l: 'boundary' }));
    // four corners and three, of which one is shared and one was there
    expect(Object.keys(site.marks)).toHaveLength(6);
    expect(Object.values(site.marks).filter(({ label }) => label === 'pin')).toHaveLength(1);
  });

  it('[S44] named points keep their names, beside each other where two are on one spot', () => {
    const at = { x: 120, y: 0 };
    const points = ['A', 'B', 'A', ''].map((name) => ({ name, at, z: null }));
    const group: FoundGroup = { key: 'p', layer: 'P', shape: 'points', points };
    const site = bringIn(blank, found(areas, group), choices({ a: 'building', p: 'mark' }));
    const there = Object.values(site.marks).filter((mark) => distance(mark, at) === 0);
    expect(there.map(({ label }) => label).toSorted()).toEqual(['A', 'B']);
  });

  it('[S44] heights become grade shots, texts notes', () => {
    const points = [
      { name: 'rim', at: { x: 1, y: 2 }, z: inches(3) },
      { name: 'inv', at: { x: 4, y: 5 }, z: inches(-6) },
    ];
    const both = found(
      { key: 'h', layer: 'P', shape: 'heights', points },
      { key: 't', layer: 'T', shape: 'texts', points },
    );
    const site = bringIn(blank, both, choices({ h: 'grade shot', t: 'note' }));
    expect(Object.values(site.shots)).toEqual([
      { x: 1, y: 2, z: 3, label: 'rim' },
      { x: 4, y: 5, z: -6, label: 'inv' },
    ]);
    expect(Object.values(site.features)).toMatchObject([
      { kind: 'note', text: 'rim' },
      { kind: 'note', text: 'inv' },
    ]);
  });

  it('[S45] a fence line keeps its arcs; all else gets straight pieces that lie no farther inside than told', () => {
    // half a circle of 100 in to the right
    const arc = {
      ...path(
        [
          [0, 0],
          [200, 0],
        ],
        false,
      ),
      bows: [-100, 0],
    };
    const group: FoundGroup = { key: 'l', layer: 'L', shape: 'lines', paths: [arc] };
    const fenced = bringIn(blank, found(group), choices({ l: 'fence line' }));
    const [line] = Object.values<FenceLine>(fenced.lines);
    if (line === undefined) throw new Error('expected a line');
    expect(legsOf(line)).toHaveLength(1);
    expect(Object.values(line.curved)).toEqual([-100]);
    const site = bringIn(blank, found(group), choices({ l: 'boundary' }));
    const [boundary] = Object.values(site.features);
    if (boundary === undefined || !('path' in boundary)) throw new Error('expected a boundary');
    const corners = verticesOf(boundary.path).map(
      ({ mark }) => site.marks[mark] ?? { x: NaN, y: NaN },
    );
    corners.slice(1).forEach((to, n) => {
      const from = corners[n] ?? to;
      const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
      expect(100 - distance(middle, { x: 100, y: 0 })).toBeLessThanOrEqual(1 + 1e-9);
    });
    // and no more pieces than that takes: 2 acos(1 - 1/100) is 16.2 degrees, 12 of them in 180
    expect(corners).toHaveLength(13);
  });

  it('[S44] a site learns where on earth it is from a file that says so, and keeps what it knows', () => {
    const here = { latitude: 40, longitude: -75 };
    const file = { ...found(areas), origin: here };
    expect(bringIn(blank, file, choices({ a: 'boundary' })).origin).toEqual(here);
    expect(bringIn(blank, file, choices({ a: 'leave out' }))).toBe(blank);
    const known = { ...blank, origin: { latitude: 1, longitude: 2 } };
    expect(bringIn(known, file, choices({ a: 'boundary' })).origin).toEqual(known.origin);
  });

  it('[S44] what is chosen opens again, and the site that it was brought onto is as it was', () => {
    const number = fc.integer({ min: -2000, max: 2000 });
    const any = (closed: boolean) =>
      fc
        .uniqueArray(fc.tuple(number, number), { minLength: 3, maxLength: 8, selector: String })
        .chain((points) =>
          fc.array(number, { minLength: points.length, maxLength: points.length }).map((bows) => ({
            ...path(points, closed, 'n'),
            bows: bows.map((bow, n) => (!closed && n === bows.length - 1 ? 0 : bow / 40)),
          })),
        );
    const groups = fc.record({
      areas: fc.array(any(true), { maxLength: 3 }),
      lines: fc.array(any(false), { maxLength: 3 }),
      a: fc.constantFrom(...offers.areas),
      l: fc.constantFrom(...offers.lines),
      p: fc.constantFrom(...offers.points),
    });
    const before = saveSite(sampleSite);
    fc.assert(
      fc.property(groups, (all) => {
        const points = all.areas.flatMap((one) =>
          one.points.map((at) => ({ name: 'q', at, z: null })),
        );
        const file = found(
          { key: 'a', layer: 'A', shape: 'areas', paths: all.areas },
          { key: 'l', layer: 'L', shape: 'lines', paths: all.lines },
          { key: 'p', layer: 'P', shape: 'points', points },
        );
        const site = bringIn(sampleSite, file, choices({ a: all.a, l: all.l, p: all.p }));
        const opened = openSite(saveSite(site));
        expect(opened.ok && saveSite(opened.value)).toBe(saveSite(site));
        const more = (name: 'lines' | 'features') =>
          Object.keys(site[name]).length - Object.keys(sampleSite[name]).length;
        const paths = (becomes: Becomes, count: number) => (becomes === 'leave out' ? 0 : count);
        const notes = all.p === 'note' ? points.length : 0;
        expect(more('lines') + more('features')).toBe(
          paths(all.a, all.areas.length) + paths(all.l, all.lines.length) + notes,
        );
        expect(saveSite(sampleSite)).toBe(before);
      }),
    );
  });

  it('[S11] more than a site holds, a wrong choice and fence without a spec are refused in one line', () => {
    const many = Array.from({ length: 5001 }, (_, n) =>
      path(
        [
          [n, 0],
          [n, 9],
        ],
        false,
      ),
    );
    const group: FoundGroup = { key: 'l', layer: 'WALLS', shape: 'lines', paths: many };
    const bring = (becomes: Becomes, more: Partial<BringChoices> = {}) =>
      bringIn(blank, found(group), { ...choices({ l: becomes }), ...more });
    expect(() => bring('boundary')).toThrow(
      'features: expected at most 5000 entries, found 5001: leave some layers out',
    );
    expect(() => bring('fence line')).toThrow(
      'lines: expected at most 5000 entries, found 5001: leave some layers out',
    );
    expect(() => bring('pool')).toThrow(
      /^WALLS: expected leave out or boundary or .* found "pool"$/,
    );
    const few = found({ ...group, paths: many.slice(0, 2) });
    expect(() => bringIn(blank, few, { ...choices({ l: 'fence line' }), fence: null })).toThrow(
      'specs: expected a spec for fence lines, found nothing',
    );
    const far = Array.from({ length: 20_001 }, (_, n) => ({
      name: '',
      at: { x: n, y: 0 },
      z: null,
    }));
    const points = found({ key: 'p', layer: 'P', shape: 'points', points: far });
    expect(() => bringIn(blank, points, choices({ p: 'mark' }))).toThrow(
      'marks: expected at most 20000 entries, found 20001: leave some layers out',
    );
  });
});
