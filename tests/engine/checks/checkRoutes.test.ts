import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { addShots } from '../../../src/site/edits/addShots.ts';
import { changeGate } from '../../../src/site/edits/changeGate.ts';
import { setGateOpens } from '../../../src/site/edits/setGateOpens.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, firstGate, gateOn } from '../plainYard.ts';

const straight = fence(bare, [
  [0, 0],
  [1200, 0],
]);
const asked = (site: Site, fields: Parameters<typeof changeGate>[2] = {}): Site =>
  changeGate(site, firstGate(site), {
    route: 'accessible',
    latchHeight: inches(40),
    threshold: inches(0),
    ...fields,
  });
const yard = asked(gateOn(straight, 0, { from: 'middle', offset: 0 }));

const told = (site: Site): ReadonlyMap<string, string> =>
  new Map(
    layOutSite(site).flags.flatMap(({ rule, message, level }) =>
      /accessible|latch out|no room at/.test(rule) ? [[`${level} ${rule}`, message]] : [],
    ),
  );

const wallAt = (site: Site, x: number, y: number): Site =>
  addFeature(site, { kind: 'building', label: 'Shed' }, [
    { x, y },
    { x: x + 60, y },
    { x: x + 60, y: y + 60 },
    { x, y: y + 60 },
  ]);

describe('gates on an accessible route', () => {
  it('[F37] with room, a low sill and a latch in reach only what no plan shows is left to measure', () => {
    expect([...told(yard)]).toEqual([
      [
        'caution accessible route',
        expect.stringMatching(/slope of the ground and what stands out from the leaf are not/),
      ],
    ]);
    const untold = told(asked(yard, { latchHeight: null, threshold: null }));
    expect(untold.get('caution accessible route')).toMatch(/height of the latch, a sill and/);
  });

  // 2010 ADA 404.2.5 1/2 in, 404.2.7 34 to 48 in: from memory
  it('[F37] a sill over 1/2 in and a latch over 48 in are each a settle', () => {
    const at = (sill: number) => told(asked(yard, { threshold: inches(sill) }));
    expect(at(0.5).has('settle sill on an accessible route')).toBe(false);
    expect(at(0.625).get('settle sill on an accessible route')).toMatch(/stands up 5\/8"/);
    const high = told(asked(yard, { latchHeight: inches(49) }));
    expect([...high.keys()]).toContain('settle latch out of reach');
  });

  // 2010 ADA Table 404.2.4.1, from memory: pull 60 deep and 18 past the latch, push 48 deep
  it('[F37] what stands within 18 in past the latch on the side to which it opens is told', () => {
    const { gates } = layOutSite(yard);
    const gate = Object.values(gates)[0]!;
    const jamb = gate.middle.x + gate.stands / 2;
    const rule = 'settle no room at the latch';
    // hinged at its start, it opens to the left: to rising y
    expect(told(wallAt(yard, jamb + 17, 20)).get(rule)).toMatch(
      /on the side to which it opens Shed \(building\) is nearer than 5'-0" out and 1'-6" past/,
    );
    expect(told(wallAt(yard, jamb + 19, 20)).has(rule)).toBe(false);
    expect(told(wallAt(yard, jamb - 20, 61)).has(rule)).toBe(false);
    // on the side from which it is pushed there need be none past the latch, but with a closer 12 in
    expect(told(wallAt(yard, jamb + 5, -100)).has(rule)).toBe(false);
    expect(told(wallAt(yard, jamb - 20, -100)).get(rule)).toMatch(/from which it is pushed/);
    // turned to the other side the two exchange
    const turned = setGateOpens(yard, firstGate(yard), 'right');
    expect(told(wallAt(turned, jamb + 17, -100)).get(rule)).toMatch(/to which it opens/);
    expect(told(wallAt(turned, jamb + 5, 20)).has(rule)).toBe(false);
  });

  it('[F37] fence that turns off beside the latch stands in that room too', () => {
    const turned = fence(bare, [
      [0, 0],
      [1200, 0],
      [1200, 600],
    ]);
    const near = (from: number) =>
      told(asked(gateOn(turned, 0, { from: 'end', offset: from }))).get(
        'settle no room at the latch',
      );
    expect(near(12)).toMatch(/the fence of/);
    expect(near(40)).toBeUndefined();
  });

  it('[F37] with two leaves one alone has to let pass', () => {
    const two = asked(gateOn(straight, 0, { from: 'middle', offset: 0 }, 2));
    expect([...told(two).keys()]).toEqual(['caution accessible route']);
    expect(told(two).get('caution accessible route')).toContain('room beside the latch');
  });

  // ASTM F2200, 16 in, from memory
  it('[F34] what is fixed within 16 in of a powered leaf that stands open is told, with how near', () => {
    const moved = changeGate(yard, firstGate(yard), { powered: true, route: null });
    const [leaf] = Object.values(layOutSite(moved).gates)[0]!.leaves;
    const near = (site: Site) =>
      layOutSite(site).flags.find(({ rule }) => rule === 'powered leaf near something')?.message;
    // open at 90 degrees it stands along x = hinge: the wall is so far to its left
    const at = (gap: number) => wallAt(moved, leaf!.hinge.x - leaf!.thickness / 2 - gap - 60, 20);
    expect(near(at(15))).toMatch(/open, Shed \(building\) is 1'-3" from a leaf that a motor moves/);
    expect(near(at(16.1))).toBeUndefined();
    // moved by hand it is left to the sweep
    expect(near(changeGate(at(15), firstGate(moved), { powered: false }))).toBeUndefined();
  });

  // 2010 ADA 404.2.4.4, 1:48: from memory
  it('[F37] ground that is steeper than 1 in 48 before the gate is told where shots describe it', () => {
    const tilted = (slope: number): Site =>
      addShots(
        yard,
        [
          [-600, -600],
          [1800, -600],
          [1800, 600],
          [-600, 600],
        ].map(([x = 0, y = 0]) => ({ x, y, z: inches(slope * y), label: '' })),
      );
    const rule = 'settle steep at an accessible gate';
    expect(told(tilted(1 / 49)).has(rule)).toBe(false);
    expect(told(tilted(1 / 40)).get(rule)).toMatch(/rises by 2\.5 %: .* expected 2\.1 %/);
  });

  it('[F37] ground counts by its steepest, whichever way it falls', () => {
    for (let degrees = 0; degrees < 180; degrees += 5) {
      const [x, y] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
      const slope = 1.01 / 48;
      const site = addShots(
        yard,
        [
          [-600, -600],
          [1800, -600],
          [1800, 600],
          [-600, 600],
        ].map(([px = 0, py = 0]) => ({
          x: px,
          y: py,
          z: inches(slope * (x * px + y * py)),
          label: '',
        })),
      );
      expect(told(site).has('settle steep at an accessible gate'), `${degrees}°`).toBe(true);
    }
  });

  it('[F34] fence of several runs near to one powered leaf is told once', () => {
    const bent = fence(gateOn(straight, 0, { from: 'middle', offset: 0 }), [
      [550, 100],
      [570, 8],
      [590, 100],
    ]);
    const site = changeGate(bent, firstGate(bent), { powered: true });
    const near = layOutSite(site).flags.filter(
      ({ rule }) => rule === 'powered leaf near something',
    );
    expect(near).toHaveLength(1);
  });
});
