import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Layout } from '../../../../src/engine/layout.ts';
import { groundBounds } from '../../../../src/drawing/groundBounds.ts';
import { printedPlan } from '../../../../src/drawing/sheet/plan/planSheet.ts';
import { matchLines } from '../../../../src/drawing/sheet/plan/matchLines.ts';
import { planTiles, type PlanTile } from '../../../../src/drawing/sheet/plan/planTiles.ts';
import { scalesOf } from '../../../../src/drawing/sheet/scales.ts';
import { trackAt, trackLength } from '../../../../src/geometry/track.ts';
import type { SitePoint } from '../../../../src/geometry/point.ts';
import { handYard } from '../../handYard.ts';
import { sampleYards } from '../../sampleYards.ts';

const room = { width: 5.7, height: 6.2 };
const system = 'feet';
const scaleOf = (ratio: number) => {
  const found = scalesOf(system).find((scale) => scale.ratio === ratio);
  if (found === undefined) throw new Error(`expected a scale of ${ratio}`);
  return found;
};

const boundsOf = (site: Parameters<typeof printedPlan>[0], layout: Layout) => {
  const fence = printedPlan(site, layout).filter(({ name }) => name === 'fence');
  const ground = groundBounds(fence.flatMap(({ primitives }) => primitives));
  if (ground === null) throw new Error('expected some fence');
  return ground;
};

const isIn = ({ x, y }: SitePoint, { bounds }: PlanTile): boolean =>
  x >= bounds.minX - 1e-6 &&
  x <= bounds.maxX + 1e-6 &&
  y >= bounds.minY - 1e-6 &&
  y <= bounds.maxY + 1e-6;

/** Places of fence, one foot apart, that lie on none of some parts. */
const missed = ({ lines }: Layout, tiles: readonly PlanTile[]): SitePoint[] =>
  Object.values(lines).flatMap(({ runs }) =>
    runs.flatMap((run) => {
      const count = Math.ceil(trackLength(run) / 12);
      const points = Array.from({ length: count + 1 }, (_, n) =>
        trackAt(run, (trackLength(run) * n) / count),
      );
      return points.filter((point) => !tiles.some((tile) => isIn(point, tile)));
    }),
  );

describe('the parts of a plan', () => {
  it('[D141] a plan of 1 in = 20 ft or larger has none', () => {
    for (const { site, layout } of sampleYards) {
      const ground = boundsOf(site, layout);
      expect(planTiles(layout, ground, room, { whole: scaleOf(240), system })).toBeNull();
    }
  });

  it('[D141] hold all fence, to a larger scale than the whole, on twelve sheets or fewer', () => {
    const far = fc.integer({ min: 2400, max: 40_000 });
    const corner = fc.record({ x: far, y: far });
    fc.assert(
      fc.property(fc.array(corner, { minLength: 2, maxLength: 6 }), (corners) => {
        const { site, layout } = handYard([{ corners, closed: false, maxBay: 120, gates: [] }]);
        const ground = boundsOf(site, layout);
        const whole = scaleOf(7200);
        const parts = planTiles(layout, ground, room, { whole, system });
        if (parts === null) return;
        const { tiles, scale } = parts;
        expect(scale.ratio).toBeLessThan(whole.ratio);
        expect(tiles.length).toBeLessThanOrEqual(12);
        for (const { bounds } of tiles) {
          expect(bounds.maxX - bounds.minX).toBeLessThanOrEqual(room.width * scale.ratio + 1e-6);
          expect(bounds.maxY - bounds.minY).toBeLessThanOrEqual(room.height * scale.ratio + 1e-6);
        }
        // between two looks at the fence an inch of paper is not missed
        const slack = 0.2 * scale.ratio;
        const grown = tiles.map(({ column, bounds }) => ({
          column,
          bounds: {
            minX: bounds.minX,
            maxX: bounds.maxX,
            minY: bounds.minY - slack,
            maxY: bounds.maxY + slack,
          },
        }));
        expect(missed(layout, grown)).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  it('[D142] meet at match lines that name each other', () => {
    const yard = sampleYards.find(({ name }) => name === 'long-boundary');
    if (yard === undefined) throw new Error('expected the long boundary');
    const { site, layout } = yard;
    const ground = boundsOf(site, layout);
    const parts = planTiles(layout, ground, room, { whole: scaleOf(6000), system });
    if (parts === null) throw new Error('expected parts');
    const { tiles } = parts;
    const sheets = tiles.map((_, n) => n + 3);
    const namedOn = tiles.map((tile) =>
      matchLines(tile, tiles, sheets).flatMap((primitive) =>
        primitive.kind === 'text' ? [Number(primitive.text.replace('MATCH LINE, SHEET ', ''))] : [],
      ),
    );
    namedOn.forEach((names, n) => {
      expect(names.length).toBeGreaterThan(0);
      for (const name of names) expect(namedOn[name - 3]).toContain(n + 3);
    });
    const lines = tiles.map((tile) =>
      matchLines(tile, tiles, sheets).flatMap((primitive) =>
        primitive.kind === 'polyline' ? [JSON.stringify(primitive.points)] : [],
      ),
    );
    // each is drawn at one place on both of its sheets
    for (const line of lines.flat())
      expect(lines.flat().filter((own) => own === line)).toHaveLength(2);
  });
});
