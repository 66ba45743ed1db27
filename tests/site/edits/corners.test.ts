import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { removeCorner } from '../../../src/site/edits/removeCorner.ts';
import { setSideLength } from '../../../src/site/edits/setSideLength.ts';
import { splitSide } from '../../../src/site/edits/splitSide.ts';
import type { FeatureId } from '../../../src/site/ids.ts';
import { sidesOf } from '../../../src/site/sideAt.ts';
import type { Site } from '../../../src/site/site.ts';
import { sampleSite } from '../sampleSite.ts';

const box = [
  { x: 0, y: 0 },
  { x: 480, y: 0 },
  { x: 480, y: 336 },
  { x: 0, y: 336 },
];
const house = addFeature(sampleSite, { kind: 'building', label: '' }, box);
const pipe = addFeature(
  sampleSite,
  {
    kind: 'utility',
    run: 'buried',
    label: '',
    service: 'gas',
    width: 2 as never,
    tolerance: 24 as never,
  },
  box,
);
const id: FeatureId = 'feature:3';

const cornersOf = (site: Site) =>
  sidesOf(site, id).map(({ start }) => {
    const { x, y } = site.marks[start] ?? { x: Number.NaN, y: Number.NaN };
    return [x, y];
  });

const sideOf = (site: Site, n: number) => {
  const side = sidesOf(site, id)[n];
  if (side === undefined) throw new Error('expected a side');
  return side.id;
};

describe('corners of a feature', () => {
  it('[S20] a corner put in and taken out again gives the feature as it was', () => {
    const split = splitSide(house, id, sideOf(house, 3), { x: 0, y: 100 });
    expect(cornersOf(split)).toEqual([
      [0, 0],
      [480, 0],
      [480, 336],
      [0, 336],
      [0, 100],
    ]);
    const again = removeCorner(split, id, sideOf(split, 4));
    expect(again).toEqual(house);
  });

  it('[S15] its mark goes if nothing else stands on it', () => {
    const four = splitSide(sampleSite, 'feature:1', 'vertex:9', { x: 200, y: 320 });
    const without = removeCorner(four, 'feature:1', 'vertex:9');
    expect('mark:5' in without.marks).toBe(false);
    expect('mark:1' in removeCorner(four, 'feature:1', 'vertex:8').marks).toBe(true);
  });

  it('[S11] [S20] three stay round ground and two along a line', () => {
    expect(() => removeCorner(sampleSite, 'feature:1', 'vertex:8')).toThrow(
      new RangeError('A building needs 3 marks: expected one to spare, found 3'),
    );
    const short = removeCorner(removeCorner(pipe, id, sideOf(pipe, 1)), id, sideOf(pipe, 2));
    expect(sidesOf(short, id)).toHaveLength(1);
    expect(() => removeCorner(short, id, sideOf(short, 0))).toThrow(/A utility needs 2 marks/);
    expect(() => splitSide(sampleSite, 'feature:2', 'vertex:8', { x: 0, y: 0 })).toThrow(
      new RangeError('features: expected one with sides, found "feature:2"'),
    );
    expect(() => splitSide(pipe, id, 'vertex:1', { x: 0, y: 0 })).toThrow(/start of a side/);
  });
});

describe('the length of a side', () => {
  it('[S23] a rectangle stays one whichever side is measured again', () => {
    fc.assert(
      fc.property(fc.nat(3), fc.integer({ min: 1, max: 64_000 }), (n, length) => {
        const [width, depth] = n % 2 === 0 ? [length / 64, 336] : [480, length / 64];
        const site = setSideLength(house, id, sideOf(house, n), length / 64);
        const corners = cornersOf(site);
        const xs = corners.map(([x = 0]) => x);
        const ys = corners.map(([, y = 0]) => y);
        expect(new Set(xs).size).toBe(2);
        expect(new Set(ys).size).toBe(2);
        expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(width, 9);
        expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(depth, 9);
      }),
    );
  });

  it('[S23] along an open line everything after the side moves along', () => {
    const site = setSideLength(pipe, id, sideOf(pipe, 0), 600);
    expect(cornersOf(site)).toEqual([
      [0, 0],
      [600, 0],
      [600, 336],
    ]);
    expect(site.marks[sidesOf(site, id)[2]?.end ?? 'mark:0']).toMatchObject({ x: 120, y: 336 });
  });

  it('[S11] [S23] no side is of no length', () => {
    expect(() => setSideLength(house, id, sideOf(house, 0), 0)).toThrow(/length: expected/);
  });

  it('[S11] [S40] a side said to be as long as it is is taped, and said again changes nothing', () => {
    const taped = setSideLength(house, id, sideOf(house, 0), 480);
    expect({ ...taped, observations: {} }).toEqual(house);
    expect(Object.values(taped.observations)).toMatchObject([{ kind: 'tape', length: 480 }]);
    expect(setSideLength(taped, id, sideOf(house, 0), 480)).toBe(taped);
  });
});
