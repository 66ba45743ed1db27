import DxfReader, { type IArcEntity, type ICircleEntity, type ILwpolylineEntity } from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { drawPlan, type PlanPart } from '../../../src/drawing/plan/drawPlan.ts';
import type { PenName } from '../../../src/drawing/pens.ts';
import type { Primitive } from '../../../src/drawing/primitive.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { GateLayout } from '../../../src/engine/layout.ts';
import { toDxf } from '../../../src/exporters/dxf/toDxf.ts';
import { distance } from '../../../src/geometry/distance.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';
import { samples } from '../samples.ts';

/** What the file may differ from the plan by, inches. */
const dust = 1e-6;

const parts: readonly PlanPart[] = [
  ...(['ground', 'features', 'fence', 'posts', 'pins', 'gates', 'leaf rooms', 'marks'] as const),
  ...(['gate labels', 'tags', 'chains', 'flags'] as const),
];

const metric = samples.map(({ name, site }) => {
  const own = { ...site, lengths: { system: 'mm', fraction: 16 } as const };
  return { name: `${name}, in millimetres`, site: own, layout: layOutSite(own), each: 25.4 };
});
const yards = [...samples.map((one) => ({ ...one, each: 1 })), ...metric];

describe.each(yards)('the DXF of $name and what the plan draws', ({ site, layout, each }) => {
  const dxf = new DxfReader().parseSync(toDxf(site, layout));
  if (dxf === null) throw new Error('expected a DXF');
  const on = <T>(layer: string, type: string): T[] =>
    dxf.entities.filter((one) => one.layer === layer && one.type === type) as unknown as T[];
  const drawn = (part: PlanPart): readonly Primitive[] =>
    drawPlan(site, layout, { omit: parts.filter((one) => one !== part) });
  const near = (one: SitePoint | undefined, other: SitePoint | undefined): boolean =>
    one !== undefined &&
    other !== undefined &&
    distance({ x: one.x / each, y: one.y / each }, other) < dust;
  const expectPaths = (found: ILwpolylineEntity[], due: readonly (readonly SitePoint[])[]) => {
    expect(found).toHaveLength(due.length);
    due.forEach((points, n) => {
      const vertices = found[n]?.vertices ?? [];
      expect(vertices).toHaveLength(points.length);
      expect(points.every((point, k) => near(vertices[k], point))).toBe(true);
    });
  };
  const expectCircles = (
    found: readonly ICircleEntity[],
    due: readonly { centre: SitePoint; radius: number }[],
  ) => {
    expect(found).toHaveLength(due.length);
    due.forEach(({ centre, radius }, n) => {
      expect(near(found[n]?.center, centre)).toBe(true);
      expect(Math.abs((found[n]?.radius ?? NaN) / each - radius)).toBeLessThan(dust);
    });
  };

  it('[X73] fence hangs from post to post and not across openings', () => {
    const due = drawn('fence').filter((one) => one.kind === 'fence');
    const found = on<ILwpolylineEntity>('FENCE-BAYS', 'LWPOLYLINE');
    expect(due.length).toBeGreaterThan(0);
    expectPaths(
      found,
      due.map(({ points }) => points),
    );
    const lines = { 'chain link': 'FENCE', boards: 'FENCE-BOARDS', panels: 'FENCE-PANELS' };
    expect(found.map(({ lineType }) => lineType)).toEqual(due.map(({ of }) => lines[of]));
  });

  it('[X73] posts and the holes that are dug for them', () => {
    const circles = drawn('posts').filter((one) => one.kind === 'circle');
    expectCircles(
      on('POSTS', 'CIRCLE'),
      circles.filter(({ ink }) => ink === 'post'),
    );
    const dug = [...layout.posts.values()].filter(({ hole }) => hole.depth > 0);
    const holes = circles.filter(
      ({ ink, centre }) => ink === 'paper' && dug.some(({ at }) => distance(at, centre) === 0),
    );
    expectCircles(on('HOLES', 'CIRCLE'), holes);
  });

  it('[X73] gates as they stand open, and the way that they go', () => {
    const placed = Object.values<GateLayout>(layout.gates).filter(({ placed: is }) => is);
    const all = drawn('gates');
    const lines = (pen: PenName) =>
      all.flatMap((one) => (one.kind === 'polyline' && one.pen === pen ? [one.points] : []));
    const arcs = all.filter((one) => one.kind === 'arc' && one.pen === 'swing');
    expectPaths(on('GATES', 'LWPOLYLINE'), lines('leaf'));
    expectPaths(on('GATE-SWINGS', 'LWPOLYLINE'), lines('swing'));
    const found = on<IArcEntity>('GATE-SWINGS', 'ARC');
    expect(found).toHaveLength(arcs.length);
    arcs.forEach((arc, n) => {
      if (arc.kind !== 'arc') return;
      expect(near(found[n]?.center, arc.centre)).toBe(true);
      expect(Math.abs((found[n]?.radius ?? NaN) / each - arc.radius)).toBeLessThan(dust);
    });
    expect(placed.length > 0).toBe(on('GATES', 'MTEXT').length > 0);
  });

  it.each([
    ['building', 'BUILDING', 'WALLS'],
    ['boundary', 'BOUNDARY'],
    ['paving', 'PAVING'],
    ['pool', 'POOL'],
    ['keep-out', 'KEEP-OUT'],
    ['gas', 'UTILITY-GAS'],
    ['electric', 'UTILITY-ELECTRIC'],
    ['water', 'UTILITY-WATER'],
  ] as const)('[X73] what has the pen of %s', (pen, ...layers) => {
    const due = drawn('features').flatMap((one) =>
      one.kind === 'polyline' && one.pen === pen ? [one] : [],
    );
    const found = layers.flatMap((layer) => on<ILwpolylineEntity>(layer, 'LWPOLYLINE'));
    expectPaths(
      found,
      due.map(({ points }) => points),
    );
    expect(found.map(({ shape }) => shape)).toEqual(due.map(({ closed }) => closed));
  });

  it('[X73] trees', () => {
    const due = drawn('features').flatMap((one) =>
      one.kind === 'circle' && (one.pen === 'tree' || one.ink === 'tree') && one.radius > 0
        ? [one]
        : [],
    );
    expectCircles(on('TREES', 'CIRCLE'), due);
  });
});
