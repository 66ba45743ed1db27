import { describe, expect, it } from 'vitest';
import { curveTables } from '../../../src/drawing/tables/curveTables.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { curveLeg } from '../../../src/site/edits/curveLeg.ts';
import { setHook } from '../../../src/site/edits/setHook.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import type { Site } from '../../../src/site/site.ts';
import { bare, fence } from '../../engine/plainYard.ts';

/** A fence of one leg of 80 ft along the x axis, bowed 20 ft: a radius of 50 ft. */
const site = ((): Site => {
  const straight = fence(bare, [
    [0, 0],
    [960, 0],
  ]);
  const [leg] = Object.values(straight.lines).flatMap((line) => legsOf(line).map(({ id }) => id));
  return curveLeg(straight, { line: 'line:1', leg: leg ?? 'vertex:', bow: -240 });
})();

const tablesOf = (from: Site) => {
  const layout = layOutSite(from);
  const line = layout.lines['line:1'];
  if (line === undefined) throw new Error('expected a line');
  return curveTables(line, layout, from);
};

describe('curveTables', () => {
  it('[D73] says radius, chord, middle ordinate and length of a curve, and to which side it bows', () => {
    // R = (C²/4 + M²) / 2M = (40² + 20²) / 40 = 50 ft; L = 2 × 50 × asin(40/50) = 92.73 ft
    expect(tablesOf(site)[0]?.text).toMatch(
      /curve to the right of its chord, seen from the hook: radius 50'-0", chord 80'-0", middle ordinate 20'-0", along it 92'-8 3\/4"/,
    );
    expect(tablesOf(setHook(site, 'line:1', 'end'))[0]?.text).toMatch(/to the left of its chord/);
  });

  it('[D73] tells every post by how far along the chord and how far off it, from the hook', () => {
    const rows = tablesOf(site)[0]?.table.rows ?? [];
    expect(rows.at(0)?.slice(1)).toEqual(['0"', '0"', '0"', '']);
    expect(rows.at(-1)?.slice(1, 4)).toEqual([`92'-8 3/4"`, `80'-0"`, '0"']);
    // 92.73 ft in bays of 5 ft at most are 19 bays
    expect(rows).toHaveLength(20);
    const back = tablesOf(setHook(site, 'line:1', 'end'))[0]?.table.rows ?? [];
    // a curve is the same seen from its other end
    expect(back.map(([, , along, off]) => [along, off])).toEqual(
      rows.map(([, , along, off]) => [along, off]),
    );
    // each bay is a chord of 2 × 50 ft × sin(92.73 / 19 / 100)
    expect(new Set(rows.slice(1).map((row) => row[4]))).toEqual(new Set([`4'-10 1/2"`]));
  });

  it('[D73] has none for straight fence', () => {
    const straight = fence(bare, [
      [0, 0],
      [960, 0],
    ]);
    expect(tablesOf(straight)).toEqual([]);
  });
});
