import { describe, expect, it } from 'vitest';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { addSightTriangle } from '../../../src/site/edits/addSightTriangle.ts';
import { moveFeature } from '../../../src/site/edits/moveFeature.ts';
import { moveMark } from '../../../src/site/edits/moveMark.ts';
import { removeFeature } from '../../../src/site/edits/removeFeature.ts';
import type { FeatureId, MarkId } from '../../../src/site/ids.ts';
import { openDocument } from '../../../src/site/openDocument.ts';
import { verticesOf } from '../../../src/site/pathOrder.ts';
import { sightCorner } from '../../../src/site/sightCorner.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { sampleSite } from '../sampleSite.ts';

const lot: FeatureId = 'feature:3';
const limits = { solid: inches(30), open: inches(42) };

const withLot = (closed: boolean, corners = square): Site =>
  addFeature(
    sampleSite,
    { kind: 'boundary', label: 'Lot', closed, setback: inches(0) },
    corners.map(([x, y]) => ({ x, y })),
  );

const square: readonly (readonly [number, number])[] = [
  [5000, 5000],
  [6000, 5000],
  [6000, 5200],
  [5000, 5600],
];

const markOf = (site: Site, n: number): MarkId => {
  const feature = site.features[lot];
  const vertices = feature !== undefined && 'path' in feature ? verticesOf(feature.path) : [];
  return vertices[n]?.mark ?? 'mark:';
};

const cornersOf = (site: Site, id: FeatureId) => {
  const feature = site.features[id];
  if (feature === undefined || !('path' in feature)) return [];
  return verticesOf(feature.path).map(({ mark }) => [site.marks[mark]?.x, site.marks[mark]?.y]);
};

const drawn = (site: Site, n: number, leg = 300): Site =>
  addSightTriangle(site, { feature: lot, mark: markOf(site, n), leg: inches(leg) }, limits);

describe('a sight triangle from a corner', () => {
  it('[S76] lies along both sides and goes with the corner, in one step that can be undone', () => {
    const site = withLot(true);
    const after = drawn(site, 1);
    expect(after.features['feature:4']).toMatchObject({
      kind: 'height zone',
      of: 'sight triangle',
      ...limits,
    });
    expect(cornersOf(after, 'feature:4').slice(0, 2)).toEqual([
      [6000, 5000],
      [5700, 5000],
    ]);
    expect(openDocument(after).ok).toBe(true);
    const moved = moveMark(after, markOf(site, 1), { x: 6100, y: 4900 });
    expect(cornersOf(moved, 'feature:4')[0]).toEqual([6100, 4900]);
    expect(removeFeature(after, 'feature:4')).toEqual(site);
  });

  it('[S76] moved by itself it leaves the corner of the lot, moved with the lot it goes along', () => {
    const after = drawn(withLot(true), 1, 100);
    const by = { x: 0, y: 40 };
    const moved = moveFeature(after, 'feature:4', by);
    expect(cornersOf(moved, lot)).toEqual(square);
    expect(cornersOf(moved, 'feature:4')).toEqual([
      [6000, 5000],
      [5900, 5040],
      [6000, 5140],
    ]);
    expect(cornersOf(moveFeature(after, lot, by), 'feature:4')[0]).toEqual([6000, 5040]);
  });

  it('[S76] a side that is shorter ends at its mark, and is told', () => {
    const site = withLot(true);
    // the side north of the corner is 200 in long
    expect(cornersOf(drawn(site, 1), 'feature:4')[2]).toEqual([6000, 5200]);
    const corner = { feature: lot, mark: markOf(site, 1) };
    expect(sightCorner(site, { ...corner, leg: inches(300) }).short).toEqual([200]);
    expect(sightCorner(site, { ...corner, leg: inches(200) }).short).toEqual([]);
    expect(Object.keys(drawn(site, 1).marks)).toHaveLength(Object.keys(site.marks).length + 1);
  });

  it('[S76] a closed boundary has a corner where it begins, an open one only between its ends', () => {
    expect(cornersOf(drawn(withLot(true), 0), 'feature:4')).toHaveLength(3);
    expect(() => drawn(withLot(false), 0)).toThrow(/two sides .* that meet, found 1/);
    expect(() => drawn(withLot(false), 3)).toThrow(/two sides .* that meet, found 1/);
    expect(cornersOf(drawn(withLot(false), 2), 'feature:4')).toHaveLength(3);
  });

  it('[S76] sides in one line, legs of nothing and other ground are refused in one line', () => {
    const straight = withLot(true, [
      [5000, 5000],
      [5500, 5000],
      [6000, 5000],
      [5500, 5900],
    ]);
    expect(() => drawn(straight, 1)).toThrow(/found sides in one line/);
    expect(() => drawn(withLot(true), 1, 0)).toThrow(/legs of more than 0/);
    const house = addFeature(sampleSite, { kind: 'building', label: '' }, [
      { x: 0, y: 0 },
      { x: 90, y: 0 },
      { x: 0, y: 90 },
    ]);
    expect(() => drawn(house, 0)).toThrow(/boundary or of paving that meet, found 0/);
  });
});
