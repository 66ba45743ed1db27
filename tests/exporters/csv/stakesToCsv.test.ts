import { describe, expect, it } from 'vitest';
import { distance } from '../../../src/geometry/distance.ts';
import { stakesToCsv } from '../../../src/exporters/csv/stakesToCsv.ts';
import { pointsFromCsv } from '../../../src/importers/csv/pointsFromCsv.ts';
import { foundIn, pointsOf } from '../../importers/foundIn.ts';
import { samples } from '../samples.ts';

const usual = { chosen: null, usual: 'feet', order: null } as const;

describe.each(samples)('stakes of $name', ({ site, layout }) => {
  it('[X11] number every post and every mark without one, where they are, to less than 1/64 in', () => {
    for (const unit of ['feet', 'metres'] as const) {
      const csv = stakesToCsv(site, layout, { unit, east: 0, north: 0 });
      const rows = csv.trimEnd().split('\r\n');
      const short = unit === 'feet' ? 'ft' : 'm';
      expect(rows[0]).toBe(
        `Point,Northing (${short}),Easting (${short}),Height (${short}),Description`,
      );
      const cells = rows.slice(1).map((row) => row.split(','));
      expect(cells.map(([number]) => Number(number))).toEqual(cells.map((_, n) => n + 1));
      const each = unit === 'feet' ? 12 : 1 / 0.0254;
      const places = cells.map(([, north, east]) => ({
        x: Number(east) * each,
        y: Number(north) * each,
      }));
      [...layout.posts.values()].forEach(({ at, tag }) => {
        const n = cells.findIndex((row) => row.join(',').includes(`post ${tag},`));
        expect(distance(places[n] ?? { x: NaN, y: NaN }, at)).toBeLessThan(1 / 64);
      });
      const alone = Object.values(site.marks).filter((mark) =>
        [...layout.posts.values()].every(({ at }) => distance(at, mark) >= 1 / 64),
      );
      expect(cells).toHaveLength(layout.posts.size + alone.length);
      alone.forEach((mark) => {
        expect(Math.min(...places.map((at) => distance(at, mark)))).toBeLessThan(1 / 64);
      });
    }
  });

  it('[X11] are read back, moved by what was added, with the heights that the ground has there', () => {
    const csv = stakesToCsv(site, layout, { unit: 'feet', east: 24_000_000, north: 1200 });
    expect(csv).not.toContain("'");
    const found = foundIn(pointsFromCsv(csv, usual));
    expect(found.refused).toEqual([]);
    const points = pointsOf(found, 'All of it › points');
    const heights = pointsOf(found, 'All of it › heights');
    expect(heights.length > 0).toBe(
      layout.ground !== null && layout.ground.mesh.triangles.length > 0,
    );
    const [first] = [...layout.posts.values()];
    const row = csv.split('\r\n').find((one) => one.includes(`post ${first?.tag},`));
    const [, north, east] = (row ?? '').split(',').map(Number);
    expect(east).toBeCloseTo((first?.at.x ?? NaN) / 12 + 2_000_000, 3);
    expect(north).toBeCloseTo((first?.at.y ?? NaN) / 12 + 100, 3);
    expect(points).toHaveLength(csv.trimEnd().split('\r\n').length - 1);
  });
});
