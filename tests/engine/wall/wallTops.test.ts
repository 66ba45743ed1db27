import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wallHole, wallReach } from '../../../src/engine/wall/wallHole.ts';
import { wallProfile } from '../../../src/engine/wall/wallProfile.ts';
import { wallSteps } from '../../../src/engine/wall/wallSteps.ts';
import type { WallTop } from '../../../src/site/wallTop.ts';
import { inches } from '../../../src/units/inches.ts';

const cored = { kind: 'cored', depth: inches(12), room: inches(1) } as const;
const wall: WallTop = {
  width: inches(8),
  height: inches(24),
  rise: inches(0),
  steps: 0,
  set: cored,
};

const level = (z: number) => ({ start: z, end: z });

describe('what a post takes of a wall', () => {
  it('[B1] a core is 1 in larger than the post and 12 in deep', () => {
    // MIL-HDBK-1013/10, glossary (a core in rock); 2.375 + 1
    expect(wallHole(wall, inches(2.375))).toMatchObject({ diameter: 3.375, depth: 12 });
    // half of 3 3/8 and 2 1/2 in of concrete: common practice, no published source
    expect(wallReach(wall, inches(2.375))).toBe(4.1875);
  });

  it('[B1] a plate has no depth and keeps its half side', () => {
    const plated: WallTop = { ...wall, set: { kind: 'plate', side: inches(8) } };
    expect(wallHole(plated, inches(2.375))).toMatchObject({ diameter: 8, depth: 0 });
    expect(wallReach(plated, inches(2.375))).toBe(4);
  });
});

describe('the top of a wall', () => {
  it('[B2] slopes evenly from the start of its leg to its end', () => {
    const top = wallProfile({ ...wall, rise: inches(-18) }, inches(240), level(100));
    expect(top).toEqual({
      length: 240,
      known: [
        [
          { at: 0, z: 142 },
          { at: 240, z: 124 },
        ],
      ],
      unknown: [],
    });
  });

  it('[B2] two steps stand between three level parts of one length', () => {
    const steps: WallTop = { ...wall, rise: inches(16), steps: 2 };
    expect(wallSteps(steps, 240)).toEqual([80, 160]);
    const heights = wallProfile(steps, inches(240), level(0))
      .known.flat()
      .map(({ z }) => z);
    expect(heights).toEqual([24, 24, 32, 32, 40, 40]);
  });

  it('[B2] stations rise and the parts between steps are level, up or down', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 200 }),
        fc.integer({ min: -400, max: 400 }),
        fc.integer({ min: 120, max: 12_000 }),
        (steps, rise, length) => {
          const made = { ...wall, rise: inches(rise), steps };
          const [top = []] = wallProfile(made, inches(length), level(0)).known;
          top.slice(1).forEach((to, n) => {
            expect(to.at).toBeGreaterThan(top[n]?.at ?? Infinity);
            if (n % 2 === 0) expect(to.z).toBe(top[n]?.z);
          });
          expect((top.at(-1)?.z ?? 0) - (top[0]?.z ?? 0)).toBeCloseTo(rise, 9);
          expect(Math.min(top.at(-1)?.z ?? 0, top[0]?.z ?? 0)).toBeCloseTo(24, 9);
        },
      ),
    );
  });

  it('[B2] told from its other end a wall is the same wall', () => {
    const known = fc.option(fc.integer({ min: -60, max: 60 }));
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 20 }),
        fc.integer({ min: -60, max: 60 }),
        fc.record({ start: known, end: known }),
        (steps, rise, ground) => {
          const length = inches(600);
          const made = { ...wall, rise: inches(rise), steps };
          const [there = []] = wallProfile(made, length, ground).known;
          const turned = { ...made, rise: inches(-rise) };
          const ends = { start: ground.end, end: ground.start };
          const [back = []] = wallProfile(turned, length, ends).known;
          expect(back).toHaveLength(there.length);
          back.toReversed().forEach(({ at, z }, n) => {
            expect(600 - at).toBeCloseTo(there[n]?.at ?? NaN, 9);
            expect(z).toBeCloseTo(there[n]?.z ?? NaN, 9);
          });
        },
      ),
    );
  });

  it('[B2] a top is nowhere lower over the ground at an end than its wall is high', () => {
    // on ground that falls by 10 a level top 24 in over its upper end is 34 in over the lower one
    const [top = []] = wallProfile(wall, inches(240), { start: 10, end: 0 }).known;
    expect(top.map(({ z }) => z)).toEqual([34, 34]);
  });
});
