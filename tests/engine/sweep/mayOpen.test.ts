import { inches } from '../../../src/units/inches.ts';
import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { mayOpen } from '../../../src/engine/sweep/mayOpen.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import type { FeatureFields } from '../../../src/site/feature.ts';
import type { Site } from '../../../src/site/site.ts';
import { toDegrees } from '../../../src/units/radians.ts';
import { fence, firstGate, gateOn, bare } from '../plainYard.ts';
import { swing, wayYard } from '../wayYard.ts';

const swings = (site: Site) => {
  const layout = layOutSite(site);
  const gate = layout.gates[firstGate(site)];
  if (gate === undefined) throw new Error('no gate');
  return mayOpen(site, layout, gate);
};

const withArea = (
  site: Site,
  fields: FeatureFields,
  [x, y, wide, high]: readonly [number, number, number, number],
): Site =>
  addFeature(site, fields, [
    { x, y },
    { x: x + wide, y },
    { x: x + wide, y: y + high },
    { x, y: y + high },
  ]);

const house = { kind: 'building', label: 'House' } as const;
const land = { kind: 'boundary', label: '', closed: true, setback: inches(0) } as const;

describe('mayOpen', () => {
  // the gate is in the middle of 600 in: faces at 276 and 324, pin at 276.9375, leaf 0.9375 from it
  it('[W7] a wall on one side stops the leaf there, the other side is free for half a round', () => {
    const { left, right } = swings(withArea(wayYard(swing), house, [200, 30, 300, 200]));
    const reach = Math.hypot(0.9375 + 44, 0.83);
    const turned = Math.asin(30 / reach) - Math.asin(0.83 / reach);
    expect(left.free).toBeCloseTo(turned, 6);
    expect(left.stop).toMatchObject({ met: { kind: 'building' }, leaf: 0 });
    expect(toDegrees(right.free)).toBe(180);
    expect(right.stop).toBeNull();
  });

  it('[W7] the leaf that is stopped first tells for both', () => {
    const { left } = swings(withArea(wayYard(swing, 2), house, [340, 40, 100, 100]));
    expect(left.stop?.leaf).toBe(1);
  });

  it('[W7] the fence that the gate stands in does not stop it, other fence does', () => {
    const free = swings(wayYard(swing));
    expect([free.left, free.right].map(({ free: angle }) => toDegrees(angle))).toEqual([180, 180]);
    const corner = gateOn(
      fence(bare, [
        [0, 0],
        [600, 0],
        [600, 600],
      ]),
      0,
      { from: 'end', offset: 30 },
    );
    // hung at the start the leaf turns away from the corner; hung at the end it meets the fence there
    expect(toDegrees(swings(corner).left.free)).toBe(180);
    const id = firstGate(corner);
    const gate = corner.gates[id];
    if (gate === undefined) throw new Error('no gate');
    const turned = { ...corner, gates: { [id]: { ...gate, hingedAt: 'end' as const } } };
    const { left, right } = swings(turned);
    expect(left.stop?.met).toEqual({ kind: 'fence', id: 'line:1' });
    expect(toDegrees(left.free)).toBeGreaterThan(90);
    expect(toDegrees(left.free)).toBeLessThan(180);
    // laid back to the outside it comes to the post of the corner
    expect(toDegrees(right.free)).toBeGreaterThan(170);
  });

  it('[W7] a boundary is told of and stops nothing; on the fence line only to the outside', () => {
    const beside = swings(withArea(wayYard(swing), land, [-100, -400, 800, 412]));
    expect(toDegrees(beside.left.free)).toBe(180);
    const reach = Math.hypot(0.9375 + 44, 0.83);
    expect(beside.left.over?.turned).toBeCloseTo(
      Math.asin(12 / reach) - Math.asin(0.83 / reach),
      6,
    );
    expect(beside.right.over).toBeNull();
    const under = swings(withArea(wayYard(swing), land, [-100, -400, 800, 400]));
    expect(under.left.over?.turned).toBe(0);
    expect(under.right.over).toBeNull();
  });

  it('[W7] two gates whose leaves could meet stop each other', () => {
    const line = fence(bare, [
      [0, 0],
      [600, 0],
    ]);
    const one = gateOn(line, 0, { from: 'start', offset: 100 });
    const apart = gateOn(one, 0, { from: 'start', offset: 300 });
    const near = gateOn(one, 0, { from: 'start', offset: 160 });
    expect(toDegrees(swings(apart).left.free)).toBe(180);
    // the second hangs at its start and swings back over the first one's ground only past a quarter
    const second = Object.keys(near.gates)[1] as `gate:${string}`;
    const layout = layOutSite(near);
    const gate = layout.gates[second];
    if (gate === undefined) throw new Error('no gate');
    const { left } = mayOpen(near, layout, gate);
    expect(left.stop?.met.kind).toBe('gate');
    expect(toDegrees(left.free)).toBeGreaterThan(90);
  });
});
