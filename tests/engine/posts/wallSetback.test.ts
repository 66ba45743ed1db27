import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wallSetback } from '../../../src/engine/posts/wallSetback.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Site } from '../../../src/site/site.ts';
import { fromDegrees } from '../../../src/units/radians.ts';
import { bare, fence } from '../plainYard.ts';

const wall = { start: { x: -100, y: 0 }, end: { x: 100, y: 0 } };
const at = { x: 20, y: 0 };

describe('wallSetback', () => {
  it('[P10] square to the wall the post stands off by what is wanted', () => {
    expect(wallSetback([wall], at, fromDegrees(90), 3)).toBeCloseTo(3, 12);
  });

  it('[P10] at an angle it stands off as far, measured square to the wall', () => {
    fc.assert(
      fc.property(fc.integer({ min: 11, max: 169 }), (degrees) => {
        const along = wallSetback([wall], at, fromDegrees(degrees), 3) ?? NaN;
        expect(along * Math.sin(fromDegrees(degrees))).toBeCloseTo(3, 9);
      }),
    );
  });

  it.each([0, 5, -9, 175, 180])('[P10] a fence at %d° runs along the wall', (degrees) => {
    expect(wallSetback([wall], at, fromDegrees(degrees), 3)).toBe(null);
  });

  it('[P10] an end away from every wall stands off none', () => {
    expect(wallSetback([wall], { x: 20, y: 1 / 64 }, fromDegrees(90), 3)).toBe(null);
    expect(wallSetback([], at, fromDegrees(90), 3)).toBe(null);
  });

  it('[P10] in the corner of two walls it stands off both', () => {
    const other = { start: { x: 20, y: 0 }, end: { x: 20, y: 100 } };
    const back = wallSetback([wall, other], at, fromDegrees(30), 3) ?? NaN;
    expect(back * Math.sin(fromDegrees(30))).toBeCloseTo(3, 9);
    expect(back * Math.cos(fromDegrees(30))).toBeGreaterThan(3);
  });
});

/** A fence of so many inches from one house to the next. */
const between = (length: number): Site => {
  const site = fence(bare, [
    [0, 0],
    [length, 0],
  ]);
  const house = (side: string) => ({
    kind: 'building' as const,
    label: '',
    path: {
      [`vertex:${side}-1`]: { mark: `mark:${side}-1` as const, order: 'a0' },
      [`vertex:${side}-2`]: { mark: `mark:${side}-2` as const, order: 'a1' },
    },
  });
  const corner = (x: number, y: number) => ({ x, y, label: '', fixed: false });
  return {
    ...site,
    marks: {
      ...site.marks,
      'mark:west-1': corner(0, -90),
      'mark:west-2': corner(0, 90),
      'mark:east-1': corner(length, -90),
      'mark:east-2': corner(length, 90),
    },
    features: { 'feature:west': house('west'), 'feature:east': house('east') },
  };
};

describe('a fence between two houses', () => {
  it('[P10] stands off both', () => {
    const { posts } = layOutSite(between(240));
    const walls = [...posts.values()].filter(({ kind }) => kind === 'wall');
    // 2 in of air and half of 2.375 in
    expect(walls.map(({ at: { x } }) => x)).toEqual([3.1875, 240 - 3.1875]);
  });

  it('[P10] without room for that stands at its marks, and says so', () => {
    const { posts, lines, flags } = layOutSite(between(5));
    expect([...posts.values()].map(({ kind }) => kind)).toEqual(['end', 'end']);
    expect(lines['line:1']?.runs[0]?.posts.map(({ station }) => station)).toEqual([0, 5]);
    expect(flags.map(({ rule }) => rule)).toEqual(['no room between posts']);
  });
});
