import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chainOf } from '../../../src/engine/posts/chain.ts';
import { coursesOf, legOn, pointAt, type Course } from '../../../src/engine/posts/course.ts';
import { spotsOf } from '../../../src/engine/posts/spotsOf.ts';
import { turningsOf, usesOfMarks } from '../../../src/engine/posts/turnings.ts';
import type { Site } from '../../../src/site/site.ts';
import { bare, fence, spec } from '../plainYard.ts';

const coursesIn = (site: Site): Course[] => {
  const line = site.lines['line:1'];
  if (line === undefined) throw new Error('no line');
  const chain = chainOf('line:1', line, site, spotsOf(site));
  return coursesOf(chain, turningsOf(chain, spec.cornerAngle, usesOfMarks([chain])));
};

/** East along the x axis through marks at whole inches, some of them neighbours. */
const straight = fc
  .uniqueArray(fc.integer({ min: 1, max: 3000 }), { minLength: 1, maxLength: 8 })
  .map((xs) => xs.toSorted((a, b) => a - b));

describe('coursesOf', () => {
  it('[P11] legs that go straight on are one course', () => {
    const [course, ...more] = coursesIn(
      fence(bare, [
        [0, 0],
        [100, 0],
        [250, 0],
      ]),
    );
    expect(more).toEqual([]);
    expect(course?.starts).toEqual([0, 100]);
    expect(course?.length).toBe(250);
  });

  it('a loop begins and ends at its corners, each once', () => {
    const courses = coursesIn(
      fence(
        bare,
        [
          [0, 0],
          [120, 0],
          [240, 0],
          [240, 240],
          [0, 240],
        ],
        'closed',
      ),
    );
    expect(courses.map(({ from, to }) => [from.at, to.at])).toEqual([
      [
        { x: 0, y: 0 },
        { x: 240, y: 0 },
      ],
      [
        { x: 240, y: 0 },
        { x: 240, y: 240 },
      ],
      [
        { x: 240, y: 240 },
        { x: 0, y: 240 },
      ],
      [
        { x: 0, y: 240 },
        { x: 0, y: 0 },
      ],
    ]);
  });
});

describe('pointAt', () => {
  it('finds every station along legs that go straight on, held to the ends', () => {
    fc.assert(
      fc.property(straight, fc.integer({ min: -50, max: 3050 }), (xs, station) => {
        const [course] = coursesIn(fence(bare, [[0, 0], ...xs.map((x) => [x, 0] as const)]));
        if (course === undefined) throw new Error('no course');
        const end = xs.at(-1) ?? 0;
        expect(pointAt(course, station).x).toBeCloseTo(Math.min(end, Math.max(0, station)), 9);
      }),
    );
  });
});

describe('legOn', () => {
  it('knows where each of its legs begins and none of another course', () => {
    const [first, second] = coursesIn(
      fence(bare, [
        [0, 0],
        [100, 0],
        [250, 0],
        [250, 90],
      ]),
    );
    if (first === undefined || second === undefined) throw new Error('no course');
    expect(first.legs.map(({ id }) => legOn(first, id)?.from)).toEqual([0, 100]);
    expect(second.legs.map(({ id }) => legOn(first, id))).toEqual([null]);
  });
});
