import { describe, expect, it } from 'vitest';
import { drawWallTops } from '../../../src/drawing/plan/drawWallTops.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { setLegWall } from '../../../src/site/edits/setLegWall.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence } from '../../engine/plainYard.ts';

const line = fence(bare, [
  [0, 0],
  [600, 0],
  [600, 300],
]);
const [leg] = Object.values(line.lines).flatMap((own) => legsOf(own).map(({ id }) => id));
const wall = {
  width: inches(12),
  height: inches(24),
  rise: inches(16),
  steps: 2,
  set: { kind: 'plate', side: inches(8) },
} as const;

describe('drawWallTops', () => {
  it('[D75] a wall is as wide as it is along its leg, with a line at each step', () => {
    const site = setLegWall(line, { line: 'line:1', leg: leg ?? 'vertex:', wall });
    const drawn = drawWallTops(site, layOutSite(site));
    const [area, ...lines] = drawn;
    if (area?.kind !== 'area') throw new Error('expected an area');
    const round = area.points.map(({ x, y }) => [x, y].map((at) => Math.round(at * 1e6) / 1e6 + 0));
    expect(round).toEqual([
      [0, 6],
      [600, 6],
      [600, -6],
      [0, -6],
    ]);
    // its outline, and steps at a third and two thirds
    const steps = lines.flatMap((each) =>
      each.kind === 'polyline' && !each.closed ? [Math.round(each.points[0]?.x ?? NaN)] : [],
    );
    expect(steps).toEqual([200, 400]);
  });

  it('[D75] fence on the ground has none', () => {
    expect(drawWallTops(line, layOutSite(line))).toEqual([]);
  });
});
