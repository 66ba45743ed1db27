import { describe, expect, it } from 'vitest';
import { drawLot, type DrawnLot } from '../../../src/site/edits/drawLot.ts';
import { removeFeature } from '../../../src/site/edits/removeFeature.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import type { Site } from '../../../src/site/site.ts';
import { sampleSite } from '../sampleSite.ts';

const corner = (x: number, y: number, label = '') => ({ x, y, label, is: 'corner' }) as const;

const lot: DrawnLot = {
  label: 'Lot',
  closed: true,
  points: [
    corner(0, 0, 'iron pin'),
    corner(0, 1200),
    { x: 500, y: 1400, label: '', is: 'curve' },
    corner(1000, 1200, 'stake'),
  ],
};

const added = (before: Site, after: Site) =>
  Object.entries(after.marks).flatMap(([id, mark]) =>
    Object.hasOwn(before.marks, id) ? [] : [mark],
  );

describe('drawLot', () => {
  it('[S46] a lot is a boundary whose corners are fixed marks with their names', () => {
    const site = drawLot(sampleSite, lot, { x: 100, y: 50 });
    expect(added(sampleSite, site)).toEqual([
      { x: 100, y: 50, label: 'iron pin', fixed: true },
      { x: 100, y: 1250, label: '', fixed: true },
      { x: 600, y: 1450, label: '', fixed: false },
      { x: 1100, y: 1250, label: 'stake', fixed: true },
    ]);
    expect(site.features['feature:3']).toMatchObject({
      kind: 'boundary',
      label: 'Lot',
      closed: true,
    });
    const opened = openSite(saveSite(site));
    expect(opened.ok ? opened.value : opened.reason).toEqual(site);
  });

  it('[S46] it begins at a mark that is there, which keeps its place and its name', () => {
    const named = {
      ...sampleSite.marks['mark:11'],
      label: 'Corner',
    } as Site['marks'][`mark:${string}`];
    const before = { ...sampleSite, marks: { ...sampleSite.marks, 'mark:11': named } };
    const site = drawLot(before, lot, 'mark:11');
    expect(site.marks['mark:11']).toEqual({ ...named, fixed: true });
    expect(added(before, site)[0]).toMatchObject({ x: named.x, y: named.y + 1200 });
  });

  it('[S46] points of curves go with the lot; corners that are fixed stay', () => {
    const site = drawLot(sampleSite, lot, { x: 100, y: 50 });
    const gone = removeFeature(site, 'feature:3');
    expect(added(sampleSite, gone).map(({ x }) => x)).toEqual([100, 100, 1100]);
  });

  it.each([
    ['too few points', { ...lot, points: lot.points.slice(0, 2) }, { x: 0, y: 0 }],
    ['a place past ten miles', lot, { x: 633_500, y: 0 }],
    ['an unknown mark', lot, 'mark:none'],
  ] as const)('[S11] %s is refused, and the site stays', (_, what, place) => {
    const before = saveSite(sampleSite);
    expect(() => drawLot(sampleSite, what, place)).toThrow(RangeError);
    expect(saveSite(sampleSite)).toBe(before);
  });
});
