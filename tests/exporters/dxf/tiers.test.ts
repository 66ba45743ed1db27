import DxfReader, { type IDimensionEntity } from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { GateLayout, Layout, LineLayout, Run } from '../../../src/engine/layout.ts';
import { isTerminal, type Post } from '../../../src/engine/post.ts';
import { toDxf } from '../../../src/exporters/dxf/toDxf.ts';
import { cross } from '../../../src/geometry/cross.ts';
import { dot } from '../../../src/geometry/dot.ts';
import { distance } from '../../../src/geometry/distance.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';
import { subtract } from '../../../src/geometry/subtract.ts';
import { unitVector } from '../../../src/geometry/unitVector.ts';
import type { Site } from '../../../src/site/site.ts';
import { parseLength } from '../../../src/units/parseLength.ts';
import { samples } from '../samples.ts';

/** What a place or a sum may differ by in the file, inches. */
const hair = 0.01;

interface Dimension {
  readonly from: SitePoint;
  readonly to: SitePoint;
  /** How far its line is off what it measures, inches, left of the way of a run above zero. */
  readonly off: number;
  readonly long: number;
  readonly text: string;
}

/** The dimensions of a DXF by a reader that is not the writer, in inches. */
const read = (site: Site, layout: Layout, each: number): IDimensionEntity[] => {
  const dxf = new DxfReader().parseSync(toDxf(site, layout));
  if (dxf === null) throw new Error('expected a DXF');
  const inInches = ({ x, y }: SitePoint) => ({ x: x / each, y: y / each, z: 0 });
  return (
    dxf.entities.filter(({ type }) => type === 'DIMENSION') as unknown as IDimensionEntity[]
  ).map((one) => ({
    ...one,
    anchorPoint: inInches(one.anchorPoint),
    linearOrAngularPoint1: inInches(one.linearOrAngularPoint1),
    linearOrAngularPoint2: inInches(one.linearOrAngularPoint2),
    actualMeasurement: one.actualMeasurement / each,
  }));
};

/** Those that measure between two of some points, by the line that they stand on, from the run out. */
const tiersOf = (all: readonly IDimensionEntity[], run: Run, points: readonly SitePoint[]) => {
  const way = unitVector(run.start, run.end) ?? { x: 1, y: 0 };
  const isOn = (at: SitePoint): boolean => points.some((one) => distance(one, at) < hair);
  const own = all.flatMap((one): Dimension[] => {
    const [from, to] = [one.linearOrAngularPoint1, one.linearOrAngularPoint2];
    if (!isOn(from) || !isOn(to)) return [];
    const off = cross(way, subtract(one.anchorPoint, to));
    return [{ from, to, off, long: one.actualMeasurement, text: one.text }];
  });
  const offs = [...new Set(own.map(({ off }) => off.toFixed(1)))];
  const tiers = offs.map((one) => own.filter(({ off }) => off.toFixed(1) === one));
  return tiers.toSorted(([a], [b]) => Math.abs(a?.off ?? 0) - Math.abs(b?.off ?? 0));
};

const total = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one, 0);

/** Points in a row as the pairs that are next to each other, to be dimensioned once each. */
const pairs = (points: readonly SitePoint[]) =>
  points.slice(1).map((to, n) => [points[n] ?? to, to] as const);

const isOnce = (tier: readonly Dimension[], [a, b]: readonly [SitePoint, SitePoint]): boolean =>
  tier.filter(
    ({ from, to }) =>
      (distance(from, a) < hair && distance(to, b) < hair) ||
      (distance(from, b) < hair && distance(to, a) < hair),
  ).length === 1;

const valueOf = (text: string, site: Site): number => {
  const length = parseLength(text, site.lengths.system);
  if (!length.ok) throw new Error(`${text}: ${length.reason}`);
  return length.value;
};

/** The points of a run in order: its ends, and its posts between them; and the ends with terminal posts alone. */
const pointsOf = (run: Run, { posts }: Layout) => {
  const on = run.posts.flatMap(({ post }) => posts.get(post) ?? []);
  const bare = (at: SitePoint, post: Post | undefined): SitePoint[] =>
    post === undefined || distance(post.at, at) < hair ? [] : [at];
  const [before, after] = [bare(run.start, on[0]), bare(run.end, on.at(-1))];
  const between = (some: readonly Post[]) => [...before, ...some.map(({ at }) => at), ...after];
  return {
    all: between(on),
    terminals: between(on.filter((post, n) => n === 0 || n === on.length - 1 || isTerminal(post))),
  };
};

const [first] = samples;
if (first === undefined) throw new Error('expected a sample');
const metricSite: Site = { ...first.site, lengths: { system: 'mm', fraction: 16 } };
const yards = [
  ...samples.map((one) => ({ ...one, each: 1 })),
  { name: 'a metric yard', site: metricSite, layout: layOutSite(metricSite), each: 25.4 },
];

const straight = ({ lines }: Layout): Run[] =>
  Object.values<LineLayout>(lines).flatMap(({ runs }) => runs.filter(({ bow }) => bow === 0));

describe.each(yards)('the tiers of the DXF of $name, by another reader', (yard) => {
  const { site, layout, each } = yard;
  const dimensions = read(site, layout, each);
  const runs = straight(layout).flatMap((run) => {
    const { all, terminals } = pointsOf(run, layout);
    if (all.length < 2) return [];
    return [{ run, all, terminals, tiers: tiersOf(dimensions, run, all) }];
  });

  it('[X71] bays are nearest the fence, then stretches where there are several, then the whole', () => {
    for (const { run, all, terminals, tiers } of runs) {
      const fenced = new Set(
        run.spaces.flatMap((one) => (one.kind === 'bay' ? [one.stretch] : [])),
      );
      const due = [
        all,
        ...(fenced.size > 1 && terminals.length < all.length ? [terminals] : []),
        ...(all.length > 2 ? [[all[0], all.at(-1)].flatMap((one) => one ?? [])] : []),
      ];
      expect(tiers).toHaveLength(due.length);
      due.forEach((points, n) => {
        const tier = tiers[n] ?? [];
        expect(tier).toHaveLength(points.length - 1);
        expect(pairs(points).every((pair) => isOnce(tier, pair))).toBe(true);
      });
    }
  });

  it('[X71] every tier adds up: to the layout as it measures, to its total as it is written', () => {
    for (const { run, all, tiers } of runs) {
      const long = distance(all[0] ?? run.start, all.at(-1) ?? run.end);
      const written = tiers.map((tier) => total(tier.map(({ text }) => valueOf(text, site))));
      for (const tier of tiers) expect(total(tier.map((one) => one.long))).toBeCloseTo(long, 3);
      for (const sum of written) expect(sum).toBeCloseTo(written[0] ?? NaN, 6);
    }
  });

  it('[X71] all tiers of a run stand on one side of it, each clear of the last', () => {
    for (const { tiers } of runs) {
      const offs = tiers.map(([one]) => one?.off ?? 0);
      const [near = 0] = offs;
      offs.forEach((off, n) => {
        expect(Math.sign(off)).toBe(Math.sign(near));
        // as far from tier to tier as from the fence to the first
        expect(off / near).toBeCloseTo(1 + n, 6);
      });
    }
  });
});

it('[X71] some sample has a run with all three tiers', () => {
  const three = yards.flatMap(({ site, layout, each }) => {
    const dimensions = read(site, layout, each);
    return straight(layout).filter(
      (run) => tiersOf(dimensions, run, pointsOf(run, layout).all).length === 3,
    );
  });
  expect(three.length).toBeGreaterThan(0);
});

describe.each(yards)('the letters of the DXF of $name', ({ site, layout, each }) => {
  it('[X71] no text of an opening lies beyond its line, where the bays have theirs', () => {
    const all = read(site, layout, each);
    for (const gate of Object.values<GateLayout>(layout.gates)) {
      const own = all.filter(
        ({ actualMeasurement: long, anchorPoint: at }) =>
          gate.placed &&
          Math.abs(long - gate.stands) < hair &&
          distance(at, gate.middle) < 2 * long,
      );
      expect(own.length > 0).toBe(gate.placed);
      for (const { anchorPoint, middleOfText, linearOrAngularPoint2: to } of own) {
        const out = subtract(anchorPoint, to);
        const middle = { x: middleOfText.x / each, y: middleOfText.y / each };
        expect(dot(subtract(middle, to), out)).toBeLessThan(dot(out, out));
      }
    }
  });
});
