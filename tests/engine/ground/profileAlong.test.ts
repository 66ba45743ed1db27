import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groundOf } from '../../../src/engine/ground/groundOf.ts';
import { heightAt } from '../../../src/engine/ground/heightAt.ts';
import { profileAlong } from '../../../src/engine/ground/profileAlong.ts';
import { profileHeight } from '../../../src/engine/ground/profileHeight.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { lerp } from '../../../src/geometry/lerp.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';
import { rotated } from '../../../src/geometry/rotated.ts';
import { inches } from '../../../src/units/inches.ts';
import { radians } from '../../../src/units/radians.ts';
import { scatter } from '../../geometry/scatter.ts';
import { rough, shotsOn, yard } from './shotsOn.ts';

const ways = fc.tuple(fc.nat(), fc.integer({ min: 2, max: 5 }));

describe('profileAlong', () => {
  it('[R3] at every station of a chain it is as high as the ground is there', () => {
    fc.assert(
      fc.property(fc.nat(), fc.integer({ min: 0, max: 60 }), ways, (seed, count, [way, legs]) => {
        const ground = groundOf(shotsOn(yard(seed, count), rough));
        // some of it outside of the shots
        const chain = scatter(way, legs, 8000);
        const profile = profileAlong(ground, chain);
        let start = 0;
        chain.slice(1).forEach((end, n) => {
          const from = chain[n] ?? end;
          const length = distance(from, end);
          for (let k = 0; k <= 150; k += 1) {
            const at = inches(start + (length * k) / 150);
            const found = profileHeight(profile, at);
            const there = heightAt(ground, lerp(from, end, k / 150));
            // ends of what is known are told to 1/64 in
            const inside = profile.unknown.every(
              (piece) => at < piece.from - 0.05 || at > piece.to + 0.05,
            );
            if (found !== null && there !== null) expect(found).toBeCloseTo(there, 1);
            if (inside) expect(found === null).toBe(there === null);
          }
          start += length;
        });
        expect(profile.length).toBeCloseTo(start, 9);
      }),
      { numRuns: 100 },
    );
  });

  it('[R3] known and unknown parts fill it, in turn, and stations rise', () => {
    fc.assert(
      fc.property(fc.nat(), ways, (seed, [way, legs]) => {
        const profile = profileAlong(
          groundOf(shotsOn(yard(seed, 20), rough)),
          scatter(way, legs, 9000),
        );
        const known = profile.known.map((stations) => ({
          from: stations[0]?.at ?? NaN,
          to: stations.at(-1)?.at ?? NaN,
        }));
        const parts = [...known, ...profile.unknown].sort((a, b) => a.from - b.from);
        let reached = 0;
        for (const { from, to } of parts) {
          expect(from).toBe(reached);
          expect(to).toBeGreaterThan(from);
          reached = to;
        }
        expect(reached).toBe(profile.length);
        for (const stations of profile.known) {
          stations.slice(1).forEach(({ at }, n) => {
            expect(at).toBeGreaterThan(stations[n]?.at ?? NaN);
          });
        }
      }),
    );
  });

  it('[R3] moving and turning the yard changes nothing of it', () => {
    fc.assert(
      fc.property(fc.nat(), fc.nat(), fc.integer({ min: 1, max: 6 }), (seed, way, angle) => {
        const turned = ({ x, y }: SitePoint): SitePoint =>
          rotated<'site'>({ x: x + 40_000, y: y - 9000 }, { x: 0, y: 0 }, radians(angle));
        const places = yard(seed, 25);
        const shots = shotsOn(places, rough);
        const moved = shots.map((shot) => ({ ...shot, ...turned(shot) }));
        const chain = scatter(way, 3, 5000);
        const plain = profileAlong(groundOf(shots), chain);
        const other = profileAlong(groundOf(moved), chain.map(turned));
        for (let k = 0; k <= 40; k += 1) {
          const at = inches((plain.length * k) / 40);
          expect(profileHeight(other, at) ?? NaN).toBeCloseTo(profileHeight(plain, at) ?? NaN, 5);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('[R3] a fence along the outermost shots has their heights, however it is turned', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 359 }), (degrees) => {
        const line = [0, 120, 240, 360].map((x) =>
          rotated<'site'>({ x, y: 0 }, { x: 700, y: -50 }, radians((degrees * Math.PI) / 180)),
        );
        const inner = rotated<'site'>(
          { x: 150, y: 300 },
          { x: 700, y: -50 },
          radians((degrees * Math.PI) / 180),
        );
        const heights = [0, 30, 6, 12, 50];
        const shots = [...line, inner].map((at, n) => ({
          id: `${n}`,
          x: at.x,
          y: at.y,
          z: heights[n] ?? NaN,
        }));
        const [start, end] = [line[0], line[3]];
        if (start === undefined || end === undefined) throw new Error('four places');
        const profile = profileAlong(groundOf(shots), [start, end]);
        expect(profile.unknown).toEqual([]);
        const stations = profile.known[0] ?? [];
        expect(stations.map(({ at }) => Math.round(at))).toEqual([0, 120, 240, 360]);
        expect(stations.map(({ z }) => Math.round(z * 1e6) / 1e6)).toEqual([0, 30, 6, 12]);
      }),
    );
  });

  it('[R3] without shots all of it is unknown, and no way has no length', () => {
    const nowhere = groundOf([]);
    const far = { x: 30, y: 40 };
    expect(profileAlong(nowhere, [{ x: 0, y: 0 }, far])).toEqual({
      length: 50,
      known: [],
      unknown: [{ from: 0, to: 50 }],
    });
    expect(profileAlong(nowhere, [far, far])).toEqual({ length: 0, known: [], unknown: [] });
    expect(profileAlong(nowhere, [])).toEqual({ length: 0, known: [], unknown: [] });
  });
});
