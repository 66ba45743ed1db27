import { describe, expect, it } from 'vitest';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { followBoundary } from '../../../src/site/edits/followBoundary.ts';
import { moveFeature } from '../../../src/site/edits/moveFeature.ts';
import { moveMark } from '../../../src/site/edits/moveMark.ts';
import { removeFeature } from '../../../src/site/edits/removeFeature.ts';
import { reverseLine } from '../../../src/site/edits/reverseLine.ts';
import { setInside } from '../../../src/site/edits/setInside.ts';
import { splitSide } from '../../../src/site/edits/splitSide.ts';
import type { FeatureId, LineId, MarkId, VertexId } from '../../../src/site/ids.ts';
import { openDocument } from '../../../src/site/openDocument.ts';
import { verticesOf } from '../../../src/site/pathOrder.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { sampleSite } from '../sampleSite.ts';

const lot: FeatureId = 'feature:3';
const line: LineId = 'line:3';

const withLot = (closed: boolean): Site =>
  addFeature(sampleSite, { kind: 'boundary', label: 'Lot', closed, setback: inches(0) }, [
    { x: 5000, y: 5000 },
    { x: 6000, y: 5000 },
    { x: 6000, y: 5600 },
    { x: 5000, y: 5600 },
  ]);

const followed = followBoundary(withLot(true), lot, 'spec:1', 4);

const placesOf = (site: Site, id: LineId = line) =>
  verticesOf(site.lines[id]?.path ?? {}).map(({ mark }) => {
    const { x = NaN, y = NaN } = site.marks[mark] ?? {};
    return [x, y];
  });

const corners = (site: Site): [VertexId, MarkId][] => {
  const feature = site.features[lot];
  return feature !== undefined && 'path' in feature
    ? verticesOf(feature.path).map(({ id, mark }) => [id, mark])
    : [];
};

describe('a line that follows a boundary', () => {
  it('[S28] runs so far inside it, and on the left of one that is open', () => {
    expect(placesOf(followed)).toEqual([
      [5004, 5004],
      [5996, 5004],
      [5996, 5596],
      [5004, 5596],
    ]);
    const open = followBoundary(withLot(false), lot, 'spec:1', 4);
    expect(open.lines[line]?.closed).toBe(false);
    expect(placesOf(open)[0]).toEqual([5000, 5004]);
    expect(openDocument(followed).ok).toBe(true);
  });

  it('[S28] goes along when the boundary moves, whichever way it was turned', () => {
    const [, corner] = corners(followed)[2] ?? [];
    const wider = moveMark(followed, corner ?? 'mark:', { x: 6100, y: 5600 });
    expect(placesOf(wider)[0]).toEqual([5004, 5004]);
    expect(placesOf(wider)[2]?.[0]).toBeGreaterThan(6085);
    expect(wider.lines[line]?.follows).toEqual({ feature: lot, inside: 4 });
    const turned = reverseLine(followed, line);
    const moved = moveFeature(turned, lot, { x: 10, y: 20 });
    expect(placesOf(moved)).toEqual(placesOf(turned).map(([x = 0, y = 0]) => [x + 10, y + 20]));
  });

  it('[S28] can be moved to another distance, and let go', () => {
    expect(placesOf(setInside(followed, line, 12))[0]).toEqual([5012, 5012]);
    const free = setInside(followed, line, null);
    expect(free.lines[line]?.follows).toBeNull();
    expect(placesOf(free)).toEqual(placesOf(followed));
    expect(setInside(free, line, 30)).toBe(free);
  });

  it('[S28] follows no more, and stays, when it is moved itself or the boundary has other corners', () => {
    const [, first] = [0, verticesOf(followed.lines[line]?.path ?? {})[0]?.mark];
    const taken = moveMark(followed, first ?? 'mark:', { x: 5050, y: 5050 });
    expect(taken.lines[line]?.follows).toBeNull();
    expect(placesOf(taken)[0]).toEqual([5050, 5050]);
    const [side] = corners(followed)[0] ?? [];
    const cut = splitSide(followed, lot, side ?? 'vertex:', { x: 5500, y: 4900 });
    const [, corner] = corners(cut)[1] ?? [];
    const after = moveMark(cut, corner ?? 'mark:', { x: 5500, y: 4800 });
    expect(after.lines[line]?.follows).toBeNull();
    expect(placesOf(after)).toEqual(placesOf(followed));
    const gone = removeFeature(followed, lot);
    expect(gone.lines[line]?.follows).toBeNull();
    expect(openDocument(gone).ok).toBe(true);
  });

  it('[S11] what is no boundary is refused in one line', () => {
    expect(() => followBoundary(sampleSite, 'feature:1', 'spec:1', 4)).toThrow(
      /^features: expected a boundary, found "feature:1"$/,
    );
  });
});
