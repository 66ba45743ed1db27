import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adjusted } from '../../../src/engine/survey/adjusted.ts';
import { networks, type Network } from '../../../src/engine/survey/networks.ts';
import type { Spot } from '../../../src/engine/survey/sighting.ts';
import { networksOf, sightingsOf } from '../../../src/engine/survey/surveyed.ts';
import { distance } from '../../../src/geometry/distance.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';
import { spot as oneSpot } from '../../../src/geometry/tolerance.ts';
import { rotated } from '../../../src/geometry/rotated.ts';
import type { MarkId } from '../../../src/site/ids.ts';
import type { Observation } from '../../../src/site/observation.ts';
import { inches } from '../../../src/units/inches.ts';
import { radians } from '../../../src/units/radians.ts';
import { chanceOf } from './chance.ts';
import { randomNetwork } from './randomNetwork.ts';
import { networkOf, sketchOf, yardTapes } from './yardNetwork.ts';

type Places = ReadonlyMap<MarkId, SitePoint>;

const tape = (from: string, to: string, length: number): Observation => ({
  kind: 'tape',
  from: `mark:${from}`,
  to: `mark:${to}`,
  length: inches(length),
  trust: null,
  label: '',
});

const drawn = (marks: Readonly<Record<string, readonly [number, number]>>): Map<MarkId, Spot> =>
  new Map(
    Object.entries(marks).map(([id, [x, y]]) => [`mark:${id}` as MarkId, { x, y, fixed: false }]),
  );

const apart = (places: Places, a: string, b: string): number =>
  distance(places.get(`mark:${a}`)!, places.get(`mark:${b}`)!);

describe('where least squares puts marks', () => {
  it.each([
    // shares of 400 in, about the width of the house
    [30, 120, 299],
    [60, 240, 290],
  ])(
    '[V7] exact readings give the true shape up to place and turn, from a sketch as far off: %i in 100',
    (_share, rough, least) => {
      let right = 0;
      const count = 300;
      for (let seed = 0; seed < count; seed += 1) {
        const { truth, tapes } = yardTapes(seed, 3);
        const { places, converged } = adjusted(
          networkOf(sketchOf(truth, rough, chanceOf(seed)), tapes),
        );
        const ids = [...truth.keys()];
        const off = ids.flatMap((a) =>
          ids.map(
            (b) =>
              distance(places.get(a)!, places.get(b)!) - distance(truth.get(a)!, truth.get(b)!),
          ),
        );
        right += Number(converged && Math.max(...off.map(Math.abs)) < 1e-6);
      }
      // a sketch so rough may be nearer to another shape that does not fit
      expect(right).toBeGreaterThanOrEqual(least);
    },
  );

  it('[V7] a mark tied by two tapes stays on the side where it is drawn', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 60, max: 600, noNaN: true }),
        fc.double({ min: -0.9, max: 0.9, noNaN: true }),
        fc.double({ min: 20, max: 400, noNaN: true }),
        fc.double({ min: 0.02, max: 2, noNaN: true }),
        (base, share, high, flat) => {
          const at = { x: base * (0.5 + share), y: high };
          const spots = drawn({ a: [0, 0], b: [base, 0], c: [at.x, flat * high] });
          const seen = [
            tape('a', 'b', base),
            tape('a', 'c', Math.hypot(at.x, at.y)),
            tape('b', 'c', Math.hypot(at.x - base, at.y)),
          ];
          const [up, down] = [1, -1].map((side) => {
            const turned = new Map(
              [...spots].map(([id, spot]) => [id, { ...spot, y: side * spot.y }] as const),
            );
            const { places } = adjusted(networkOf(turned, seen));
            const [p, q, r] = ['a', 'b', 'c'].map((id) => places.get(`mark:${id}`)!);
            return (q!.x - p!.x) * (r!.y - p!.y) - (q!.y - p!.y) * (r!.x - p!.x);
          });
          expect(up! / base).toBeCloseTo(high, 4);
          expect(down! / base).toBeCloseTo(-high, 4);
        },
      ),
    );
  });

  it('[V7] a sketch that fits stays to the last bit', () => {
    for (let seed = 0; seed < 50; seed += 1) {
      const { truth, tapes } = yardTapes(seed, 3);
      const spots = sketchOf(truth, 0, chanceOf(seed));
      const { places } = adjusted(networkOf(spots, tapes));
      for (const [id, { x, y }] of spots) expect(places.get(id)).toEqual({ x, y });
    }
  });

  it('[V7] where marks stand, they stay when they are adjusted again', () => {
    for (let seed = 0; seed < 100; seed += 1) {
      for (const one of networksOf(randomNetwork(seed).site)) {
        const { places, converged } = adjusted(one);
        if (!converged) continue;
        const spots = new Map(
          [...one.spots].map(([id, spot]) => [id, { ...spot, ...places.get(id) }] as const),
        );
        const again = adjusted({ ...one, spots }).places;
        for (const [id, at] of places) expect(distance(again.get(id)!, at)).toBeLessThan(oneSpot);
      }
    }
  });

  it('[V8] the order of entry makes no difference, not of a bit', () => {
    for (let seed = 0; seed < 60; seed += 1) {
      const { site } = randomNetwork(seed);
      const spots = new Map(Object.entries(site.marks) as [MarkId, Spot][]);
      const sightings = sightingsOf(site);
      const { between } = chanceOf(seed);
      const shuffled = <T>(list: Iterable<T>): T[] =>
        [...list]
          .map((one) => ({ one, at: between(0, 1) }))
          .toSorted((a, b) => a.at - b.at)
          .map(({ one }) => one);
      const placesOf = (all: Network) =>
        new Map(networks(all.spots, all.sightings).flatMap((one) => [...adjusted(one).places]));
      const ours = placesOf({ spots, sightings });
      const other = placesOf({
        spots: new Map(shuffled(spots)),
        // ids are given in the order of entry
        sightings: shuffled(sightings).map((one, n) => ({ ...one, id: `observation:${n + 1}` })),
      });
      for (const [id, at] of ours) expect(other.get(id)).toEqual(at);
    }
  });

  it('[V8] moving, turning and mirroring the sketch moves, turns and mirrors the result', () => {
    fc.assert(
      fc.property(
        fc.nat(10_000),
        fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }),
        fc.integer({ min: -50_000, max: 50_000 }),
        fc.constantFrom(1, -1),
        (seed, angle, far, side) => {
          const { truth, tapes } = yardTapes(seed, 2);
          const moved = ({ x, y }: SitePoint): SitePoint => {
            const at = rotated<'site'>({ x: side * x, y }, { x: 0, y: 0 }, radians(angle));
            return { x: at.x + far, y: at.y - far / 2 };
          };
          const spots = sketchOf(truth, 30, chanceOf(seed));
          const other = new Map(
            [...spots].map(([id, spot]) => [id, { ...spot, ...moved(spot) }] as const),
          );
          const [here, there] = [spots, other].map((one) => adjusted(networkOf(one, tapes)).places);
          for (const [id, at] of here!) {
            expect(distance(there!.get(id)!, moved(at))).toBeLessThan(1e-5);
          }
        },
      ),
    );
  });

  it('[V9] whatever is drawn and read, the answer is of finite numbers and nothing is thrown', () => {
    const coordinate = fc.oneof(
      fc.constantFrom(0, 0, 1, 100, -633_600, 633_600),
      fc.double({ min: -1000, max: 1000, noNaN: true }),
    );
    const mark = fc.constantFrom('a', 'b', 'c', 'd', 'e').map((id) => `mark:${id}` as MarkId);
    const length = fc.oneof(
      fc.constantFrom(Number.MIN_VALUE, 1e-9, 633_600),
      fc.double({ min: 0.01, max: 2000, noNaN: true }),
    );
    const trust = fc
      .oneof(fc.constant(null), fc.constantFrom(1e-6, 1, 1e4))
      .map((one) => one as never);
    const rest = { trust, label: fc.constant('') };
    const three = { at: mark, from: mark, to: mark };
    const all: fc.Arbitrary<Observation> = fc.oneof(
      fc.record({
        kind: fc.constant('tape' as const),
        from: mark,
        to: mark,
        length: length.map(inches),
        ...rest,
      }),
      fc.record({ kind: fc.constant('square' as const), ...three, ...rest }),
      fc.record({ kind: fc.constant('straight' as const), ...three, ...rest }),
      fc.record({
        kind: fc.constant('offset' as const),
        ...three,
        distance: coordinate.map(inches),
        ...rest,
      }),
      fc.record({ kind: fc.constant('parallel' as const), ...three, other: mark, ...rest }),
      fc.record({
        kind: fc.constant('bearing' as const),
        from: mark,
        to: mark,
        bearing: fc.double({ min: -3, max: 3, noNaN: true }).map(radians),
        ...rest,
      }),
      fc.record({
        kind: fc.constant('fix' as const),
        mark,
        x: coordinate,
        y: coordinate,
        accuracy: fc.constantFrom(inches(1e-3), inches(100)),
        label: fc.constant(''),
      }),
    );
    const place = fc.record({
      x: coordinate,
      y: coordinate,
      fixed: fc.constantFrom(false, false, true),
    });
    fc.assert(
      fc.property(
        fc.tuple(place, place, place, place, place),
        fc.array(all, { minLength: 1, maxLength: 12 }),
        (five, seen) => {
          const spots = new Map(
            five.map((one, n) => [`mark:${'abcde'[n]}` as MarkId, one] as const),
          );
          const { places } = adjusted(networkOf(spots, seen));
          for (const { x, y } of places.values()) expect(Number.isFinite(x + y)).toBe(true);
        },
      ),
      { numRuns: 2000 },
    );
  }, 120_000);

  it('[V9] marks all on one spot come apart as far as they are taped', () => {
    const spots = drawn({ a: [5, 5], b: [5, 5], c: [5, 5] });
    const { places, converged } = adjusted(
      networkOf(spots, [tape('a', 'b', 30), tape('b', 'c', 40), tape('c', 'a', 50)]),
    );
    expect(converged).toBe(true);
    expect(apart(places, 'a', 'b')).toBeCloseTo(30, 6);
    expect(apart(places, 'b', 'c')).toBeCloseTo(40, 6);
    expect(apart(places, 'c', 'a')).toBeCloseTo(50, 6);
  });

  it('[V9] marks drawn in one row leave it where the tapes say so', () => {
    const spots = drawn({ a: [0, 0], b: [30, 0], c: [60, 0] });
    const { places } = adjusted(
      networkOf(spots, [tape('a', 'b', 30), tape('b', 'c', 40), tape('c', 'a', 50)]),
    );
    expect(apart(places, 'c', 'a')).toBeCloseTo(50, 6);
    expect(Math.abs(places.get('mark:b')!.y - places.get('mark:a')!.y)).toBeGreaterThan(1);
  });

  it('[V9] readings that cannot all be are shared out, and the sums come to an end', () => {
    const spots = drawn({ a: [0, 0], b: [30, 1], c: [60, 0] });
    const { places, converged } = adjusted(
      networkOf(spots, [tape('a', 'b', 30), tape('b', 'c', 30), tape('a', 'c', 80)]),
    );
    expect(converged).toBe(true);
    // all in one row, each off by its share of the 20 in: by the squares of .2625 in and .2833 in
    const weights = [30, 30, 80].map((length) => (1 / 4 + length / 2400) ** 2);
    const whole = weights.reduce((a, b) => a + b);
    expect(apart(places, 'a', 'b')).toBeCloseTo(30 + (20 * weights[0]!) / whole, 3);
    expect(apart(places, 'a', 'c')).toBeCloseTo(80 - (20 * weights[2]!) / whole, 3);
  });
});
