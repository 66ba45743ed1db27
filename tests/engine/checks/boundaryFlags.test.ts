import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { changeFeature } from '../../../src/site/edits/changeFeature.ts';
import { followBoundary } from '../../../src/site/edits/followBoundary.ts';
import { setInside } from '../../../src/site/edits/setInside.ts';
import { inches } from '../../../src/units/inches.ts';
import type { Site } from '../../../src/site/site.ts';
import { bare } from '../plainYard.ts';

const lot = addFeature(
  bare,
  { kind: 'boundary', label: 'Lot line', closed: true, setback: inches(0) },
  [
    { x: 0, y: 0 },
    { x: 900, y: 0 },
    { x: 900, y: 600 },
    { x: 0, y: 600 },
  ],
);

const inside = (by: number): Site => followBoundary(lot, 'feature:1', 'spec:six', by);
const told = (site: Site) => layOutSite(site).flags.map(({ level, rule }) => `${level}: ${rule}`);

describe('fence beside a boundary', () => {
  it('[F24] holes over it are told by how many and how far; half a hole inside is enough', () => {
    // terminals of 2.375 in get holes of 10 in: half of that is 5 in (derived from ASTM F567-07 5.1)
    expect(told(inside(5))).toEqual([]);
    const [flag] = layOutSite(inside(4)).flags;
    expect(flag?.rule).toBe('hole over the boundary');
    expect(flag?.message).toMatch(
      /^line:1: 4 holes reach over Lot line, that of post [A-D] by 1":/,
    );
    expect(told(setInside(inside(4), 'line:1', 6))).toEqual([]);
  });

  it('[F24] a setback that is not kept is told', () => {
    const asked = changeFeature(inside(12), 'feature:1', { setback: inches(24) });
    expect(told(asked)).toEqual(['settle: nearer than the setback']);
    expect(told(setInside(asked, 'line:1', 24))).toEqual([]);
  });
});
