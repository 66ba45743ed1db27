import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { contains } from '../../../src/geometry/contains.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';
import { trackAt, trackLength } from '../../../src/geometry/track.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { addShots } from '../../../src/site/edits/addShots.ts';
import { curveLeg } from '../../../src/site/edits/curveLeg.ts';
import { setGateWay } from '../../../src/site/edits/setGateWay.ts';
import { setLegWall } from '../../../src/site/edits/setLegWall.ts';
import type { FenceSpec } from '../../../src/site/fenceSpec.ts';
import type { LineId } from '../../../src/site/ids.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { parseLength } from '../../../src/units/parseLength.ts';
import { bare, fence, firstGate, gateOn, spec } from '../plainYard.ts';

type Spot = readonly [number, number];

const corner: readonly Spot[] = [
  [0, 0],
  [300, 0],
  [0, 300],
];

const zoned = (site: Site, limits = { solid: 30, open: 42 }, spots = corner): Site =>
  addFeature(
    site,
    {
      kind: 'height zone',
      label: 'at Elm',
      of: 'sight triangle',
      solid: inches(limits.solid),
      open: inches(limits.open),
    },
    spots.map(([x, y]) => ({ x, y })),
  );

const built = (site: Site, change: Partial<FenceSpec>): Site => ({
  ...site,
  specs: { 'spec:six': { ...spec, ...change } },
});

const flagsIn = (site: Site) =>
  layOutSite(site).flags.filter(({ rule }) => rule === 'fence over a height limit');

/** What a message says of the length inside, inches. */
const insideOf = (message: string): number => {
  const found = /for (.*?), up to/.exec(message)?.[1] ?? '';
  const length = parseLength(found, 'inches');
  return length.ok ? length.value : NaN;
};

const across = fence(bare, [
  [-600, 60],
  [900, 60],
]);

describe('fence in ground with a height limit', () => {
  it('[F43] is a settle where it goes in, once, with its height, the limit, the length and the source', () => {
    const flags = flagsIn(zoned(across));
    expect(flags).toHaveLength(1);
    expect(flags[0]).toMatchObject({
      level: 'settle',
      at: { x: 0, y: 60 },
      place: { kind: 'line' },
    });
    // 6'-0" of fabric and 2" under it; Zanesville OH: open fence 3.5 ft
    expect(flags[0]?.message).toMatch(
      /the sight triangle “at Elm” for 20'-0", up to 6'-2" over the ground \(fabric 6'-0", 2" under it; .*open fence no higher than 3'-6" there \(Zanesville OH: .*the local code decides\)/,
    );
  });

  it('[F43] in two such grounds two, in none none, and low fence has none', () => {
    const two = zoned(zoned(across), { solid: 30, open: 30 }, [
      [600, 0],
      [700, 0],
      [600, 100],
    ]);
    expect(flagsIn(two)).toHaveLength(2);
    expect(
      flagsIn(
        fence(zoned(bare), [
          [-600, -1],
          [900, -1],
        ]),
      ),
    ).toEqual([]);
    expect(flagsIn(zoned(across, { solid: 30, open: 74 }))).toEqual([]);
    expect(flagsIn(zoned(across, { solid: 30, open: 73.9 }))).toHaveLength(1);
  });

  it('[F44] slats are compared with the limit of what one cannot see through, the gap and barbed wire count', () => {
    const low = { fabricHeight: inches(36), gapUnder: inches(2) };
    const open = zoned(across);
    expect(flagsIn(built(open, low))).toEqual([]);
    expect(flagsIn(built(open, { ...low, solid: 0.9 }))[0]?.message).toMatch(
      /fence that one cannot see through no higher than 2'-6"/,
    );
    expect(flagsIn(built(open, { ...low, gapUnder: inches(7) }))[0]?.message).toContain(
      `7" under it`,
    );
    const wired = { ...low, barbedWire: { strands: 3, arms: 'outward' as const } };
    expect(flagsIn(built(open, wired))[0]?.message).toContain('barbed wire 1\'-0" over it');
  });

  it('[F44] a wall under it counts, at its height where the fence is in', () => {
    const low = built(zoned(across), { fabricHeight: inches(36) });
    const id = Object.keys(low.lines)[0] as LineId;
    const leg = legsOf(low.lines[id] ?? Object.values(low.lines)[0]!)[0]?.id ?? 'vertex:';
    const on = (height: number, rise: number): Site =>
      setLegWall(low, {
        line: id,
        leg,
        wall: {
          width: inches(12),
          height: inches(height),
          rise: inches(rise),
          steps: 0,
          set: { kind: 'plate', side: inches(6) },
        },
      });
    expect(flagsIn(on(4, 0))).toEqual([]);
    expect(flagsIn(on(5, 0))[0]?.message).toContain(`a wall of 5"`);
    // rises 150 in over 1500 in from 0: 84 in where the fence leaves the ground at 240 in
    expect(flagsIn(on(0, 150))[0]?.message).toContain(`a wall of 7'-0"`);
    // on ground that rises 1 in 10 as well the same top is level with it
    const shots = [
      [-700, -500],
      [1000, -500],
      [1000, 500],
      [-700, 500],
    ].map(([x = 0, y = 0]) => ({ label: '', x, y, z: inches(1000 + x / 10) }));
    expect(flagsIn(addShots(on(0, 150), shots))).toEqual([]);
    expect(flagsIn(addShots(on(8, 150), shots))[0]?.message).toContain('a wall of 8"');
  });

  it('[F45] along the edge it is inside; closed leaves count, a gap without a leaf does not', () => {
    const edge = fence(bare, [
      [-600, 0],
      [900, 0],
    ]);
    expect(insideOf(flagsIn(zoned(edge))[0]?.message ?? '')).toBe(300);
    const gated = gateOn(zoned(edge), 0, { from: 'start', offset: 700 });
    expect(insideOf(flagsIn(gated)[0]?.message ?? '')).toBe(300);
    const open = setGateWay(
      gated,
      firstGate(gated),
      { kind: 'gap', clear: inches(48) },
      {
        hinge: 'hardware:hinge',
        latch: 'hardware:fork',
      },
    );
    // its posts stand 48 in and twice half of 2.875 in apart
    expect(insideOf(flagsIn(open)[0]?.message ?? '')).toBeCloseTo(300 - 50.875, 1);
  });

  it('[F45] the length inside is that of sampling fence and curve, to half a percent', () => {
    const coordinate = fc.integer({ min: -900, max: 900 });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 6 }),
        fc.integer({ min: -200, max: 200 }),
        (ring, bow) => {
          const drawn = fence(bare, [
            [-800, 0],
            [800, 100],
          ]);
          const id = Object.keys(drawn.lines)[0] as LineId;
          const leg = legsOf(drawn.lines[id]!)[0]?.id ?? 'vertex:';
          const site = zoned(
            curveLeg(drawn, { line: id, leg, bow }),
            { solid: 30, open: 30 },
            ring,
          );
          const track = { start: { x: -800, y: 0 }, end: { x: 800, y: 100 }, bow };
          const all = trackLength(track);
          const ground: SitePoint[] = ring.map(([x, y]) => ({ x, y }));
          const count = 2000;
          const hits = Array.from({ length: count }, (_, n) =>
            contains(ground, trackAt(track, ((n + 0.5) * all) / count)),
          ).filter(Boolean).length;
          const sampled = (hits * all) / count;
          const [flag] = flagsIn(site);
          const told = flag === undefined ? 0 : insideOf(flag.message);
          // each end of a piece is sampled to a step
          expect(Math.abs(told - sampled)).toBeLessThan(0.005 * sampled + (8 * all) / count);
        },
      ),
      { numRuns: 30 },
    );
  });

  it('[F43] turning, moving and mirroring the yard keeps every flag', () => {
    const yard = zoned(
      fence(bare, [
        [-600, 0],
        [500, 0],
        [40, 280],
        [40, 900],
      ]),
    );
    const flags = flagsIn(yard);
    expect(flags).toHaveLength(1);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 7, noNaN: true }),
        fc.integer({ min: -90_000, max: 90_000 }),
        fc.constantFrom(1, -1),
        (angle, by, side) => {
          const move = ({ x, y }: SitePoint): SitePoint => ({
            x: x * Math.cos(angle) - side * y * Math.sin(angle) + by,
            y: x * Math.sin(angle) + side * y * Math.cos(angle) - by,
          });
          const marks = Object.fromEntries(
            Object.entries(yard.marks).map(([id, mark]) => [id, { ...mark, ...move(mark) }]),
          );
          const [flag] = flagsIn({ ...yard, marks });
          expect(flag?.message).toBe(flags[0]?.message);
          const at = move(flags[0]?.at ?? { x: 0, y: 0 });
          expect(flag?.at.x).toBeCloseTo(at.x, 5);
          expect(flag?.at.y).toBeCloseTo(at.y, 5);
        },
      ),
      { numRuns: 30 },
    );
  });
});
