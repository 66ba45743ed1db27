import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loaded, type Loaded } from '../load/loadLines.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Layout } from '../../../src/engine/layout.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { middleOrdinate } from '../../../src/geometry/middleOrdinate.ts';
import { arcOf, nearestOnTrack } from '../../../src/geometry/track.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { addShots } from '../../../src/site/edits/addShots.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import { curveLeg } from '../../../src/site/edits/curveLeg.ts';
import { reverseLine } from '../../../src/site/edits/reverseLine.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, firstGate, gateOn } from '../plainYard.ts';

/** A fence of one leg along the x axis, bowed. */
const arcFence = (chord: number, bow: number): Site => {
  const site = fence(bare, [
    [0, 0],
    [chord, 0],
  ]);
  const leg = Object.values(site.lines).flatMap((line) => legsOf(line).map(({ id }) => id))[0];
  return curveLeg(site, { line: 'line:1', leg: leg ?? 'vertex:', bow });
};

const runOf = ({ lines }: Layout) => {
  const run = lines['line:1']?.runs[0];
  if (run === undefined) throw new Error('no run');
  return run;
};

const bays = (laid: Layout) =>
  runOf(laid).spaces.flatMap(({ kind, length }) => (kind === 'bay' ? [length] : []));

const bows = fc
  .tuple(fc.integer({ min: 240, max: 6000 }), fc.double({ min: -1, max: 1, noNaN: true }))
  .filter(([chord, share]) => Math.abs(share * chord) > 1);

describe('fence along a curve', () => {
  it('[C1] half a circle of 50 ft radius is 157.08 ft of fence in equal bays along it', () => {
    const laid = loaded(arcFence(1200, 600));
    // π × 50 ft; the table's 5 ft at 100 ft of radius and under makes 32 bays of 58.9 in
    expect(runOf(laid).length).toBeCloseTo(600 * Math.PI, 9);
    expect(bays(laid)).toHaveLength(32);
    for (const bay of bays(laid)) expect(bay).toBeCloseTo((600 * Math.PI) / 32, 9);
    const centre = { x: 600, y: 0 };
    for (const { at } of laid.posts.values()) expect(distance(at, centre)).toBeCloseTo(600, 9);
    const fabric = laid.load.find(({ item }) => item.startsWith('Fabric'));
    expect(fabric?.count).toBeCloseTo(600 * Math.PI, 6);
  });

  it('[C1] begins and ends at a post, also where it goes on straight', () => {
    const site = fence(bare, [
      [-1200, 0],
      [0, 0],
      [1200, 0],
    ]);
    const [, leg] = Object.values(site.lines).flatMap((line) => legsOf(line).map(({ id }) => id));
    const bent = curveLeg(site, { line: 'line:1', leg: leg ?? 'vertex:', bow: 30 });
    const laid = loaded(bent);
    const runs = laid.lines['line:1']?.runs ?? [];
    expect(runs.map(({ bow }) => bow)).toEqual([0, 30]);
    expect(laid.posts.get(runs[0]?.posts.at(-1)?.post ?? 'post:')?.kind).toBe('bend');
  });

  it('[C1] the corner that it makes with its neighbour is told from tangent to tangent', () => {
    const site = fence(bare, [
      [-600, 0],
      [0, 0],
      [600, 0],
    ]);
    const [, leg] = Object.values(site.lines).flatMap((line) => legsOf(line).map(({ id }) => id));
    const kindAt = (bow: number): string | undefined => {
      const bent = curveLeg(site, { line: 'line:1', leg: leg ?? 'vertex:', bow });
      const laid = loaded(bent);
      const id = laid.lines['line:1']?.runs[0]?.posts.at(-1)?.post;
      return laid.posts.get(id ?? 'post:')?.kind;
    };
    // the tangent turns by twice the angle of the bow: 2 atan(2 × 60 / 600) is 22.6°, with 90 it is 33.4°
    expect([kindAt(60), kindAt(90)]).toEqual(['bend', 'corner']);
  });

  it('[C2] bays are those of the published table for its radius, or as straight', () => {
    // Tremonton UT 3.18.010
    for (const [radius, longest] of [
      [600, 120],
      [300, 96],
      [150, 72],
      [80, 60],
    ] as const) {
      const chord = 1440;
      const bow = middleOrdinate(radius * 12, chord) ?? NaN;
      const site = arcFence(chord, bow);
      const most = Math.max(...bays(layOutSite(site)));
      expect(most).toBeLessThanOrEqual(longest + 1e-9);
      expect(bays(layOutSite(site))).toHaveLength(
        Math.ceil(runOf(layOutSite(site)).length / longest),
      );
      const straight = changeSpec(site, 'spec:six', { onCurves: 'as straight' });
      expect(bays(layOutSite(straight))).toHaveLength(
        Math.ceil(runOf(layOutSite(site)).length / 120),
      );
    }
  });

  it('[C3] holes keep off services and bays under their maximum, whatever the bow', () => {
    fc.assert(
      fc.property(
        bows,
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        ([chord, share], across) => {
          const x = across * chord;
          const site = addFeature(
            arcFence(chord, share * chord),
            {
              kind: 'utility',
              run: 'buried',
              label: '',
              service: 'gas',
              width: inches(2),
              tolerance: inches(18),
            },
            [
              { x, y: -9000 },
              { x, y: 9000 },
            ],
          );
          const laid = loaded(site);
          for (const post of laid.posts.values()) {
            if (post.kind !== 'line') continue;
            expect(Math.abs(post.at.x - x)).toBeGreaterThan(19 + post.hole.diameter / 2 - 1e-6);
          }
          const stopped = laid.flags.some(({ rule }) => rule === 'bay over its maximum');
          if (!stopped) for (const bay of bays(laid)) expect(bay).toBeLessThan(120 + 1e-6);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('[C3] drawn from its other end it has the same posts and the same load', () => {
    fc.assert(
      fc.property(bows, ([chord, share]) => {
        const site = arcFence(chord, share * chord);
        const [there, back] = [loaded(site), loaded(reverseLine(site, 'line:1'))];
        const places = (laid: Layout) =>
          [...laid.posts.values()].map(({ at }) => at).toSorted((a, b) => a.x - b.x || a.y - b.y);
        places(back).forEach((at, n) => {
          expect(distance(at, places(there)[n] ?? { x: NaN, y: NaN })).toBeLessThan(1e-3);
        });
        const counts = (laid: Loaded) =>
          laid.load.map(({ item, count }) => `${item} ${count.toFixed(3)}`);
        expect(counts(back)).toEqual(counts(there));
      }),
      { numRuns: 60 },
    );
  });

  it('[C4] a gate has its opening between the faces of its posts, which stand on the arc', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 400, max: 3000 }),
        fc.double({ min: 0.02, max: 0.5, noNaN: true }),
        fc.constantFrom('start', 'middle', 'end'),
        (chord, share, from) => {
          const anchor = { from, offset: from === 'middle' ? 0 : 90 } as const;
          const site = gateOn(arcFence(chord, share * chord), 0, anchor);
          const laid = loaded(site);
          const gate = laid.gates[firstGate(site)];
          if (gate === undefined) throw new Error('no gate');
          expect(gate.placed).toBe(true);
          expect(distance(gate.start, gate.end) - 2.875).toBeCloseTo(gate.opening.target, 6);
          const leg = laid.lines['line:1']?.legs[0];
          if (leg === undefined) throw new Error('no leg');
          for (const at of [gate.start, gate.end])
            expect(nearestOnTrack(at, leg).off).toBeLessThan(1e-6);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('[C4] a gate that is wider than its curve is a stop that says by how much', () => {
    // half a circle 44 in wide has no chord of 48 in and a post
    const site = gateOn(arcFence(44, 22), 0, { from: 'middle', offset: inches(0) });
    const laid = loaded(site);
    expect(laid.gates[firstGate(site)]?.placed).toBe(false);
    const [flag] = laid.flags.filter(({ rule }) => rule === 'gate wider than its leg');
    expect(flag?.level).toBe('stop');
    expect(flag?.message).toMatch(/wider than the fence between two corners/);
  });

  it('[C5] bowed by next to nothing it is a straight one', () => {
    const straight = layOutSite(
      fence(bare, [
        [0, 0],
        [1440, 0],
      ]),
    );
    const bent = layOutSite(arcFence(1440, 1e-4));
    expect(bays(bent)).toHaveLength(bays(straight).length);
    [...bent.posts.values()].forEach(({ at }, n) => {
      expect(distance(at, [...straight.posts.values()][n]?.at ?? { x: NaN, y: NaN })).toBeLessThan(
        1e-3,
      );
    });
  });

  it('[C6] on a plane the ground under it is as high as the plane, along the curve', () => {
    const shots = [
      [-4000, -4000],
      [4000, -4000],
      [4000, 4000],
      [-4000, 4000],
    ].map(([x = 0, y = 0]) => ({ x, y, z: inches(0.1 * x), label: '' }));
    const laid = loaded(addShots(arcFence(1200, 400), shots));
    const run = runOf(laid);
    const arc = arcOf(run);
    if (arc === null || run.ground === null) throw new Error('expected ground under an arc');
    // by Simpson's rule over the arc: its slope in plan is 0.1 cos of its bearing
    const steps = 2000;
    const paceAt = (n: number) =>
      Math.hypot(1, 0.1 * Math.sin(arc.start + (n / steps) * arc.sweep)) *
      ((arc.radius * Math.abs(arc.sweep)) / steps);
    let length = 0;
    for (let n = 0; n < steps; n += 2)
      length += (paceAt(n) + 4 * paceAt(n + 1) + paceAt(n + 2)) / 3;
    expect(run.length).toBeCloseTo(length, 1);
    expect(run.ground.profile.length).toBeCloseTo(arc.radius * Math.abs(arc.sweep), 6);
  });

  it('[F25] a curve at which the fabric turns by more than the corner angle is told', () => {
    const rules = (site: Site) => layOutSite(site).flags.map(({ rule }) => rule);
    expect(rules(arcFence(1200, 300))).not.toContain('curve too tight');
    // half a circle of 5 ft radius: 188.5 in of fence in 4 bays that turn by 45° each
    expect(rules(arcFence(120, 60))).toContain('curve too tight');
  });
});
