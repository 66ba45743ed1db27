import { describe, expect, it } from 'vitest';
import type { Atom } from '../../../src/drawing/atom.ts';
import { explode } from '../../../src/drawing/explode.ts';
import { textBox } from '../../../src/drawing/lettering/textBox.ts';
import type { Primitive } from '../../../src/drawing/primitive.ts';
import { boxesOverlap } from '../../geometry/boxesOverlap.ts';
import { segmentIntersection } from '../../../src/geometry/segmentIntersection.ts';
import { radians } from '../../../src/units/radians.ts';
import { textsOf } from '../textsOf.ts';

/** Four posts on 9 ft of fence, at 1 in = 10 ft: no length fits on its piece. */
const chainAlong = (x: number, y: number): Primitive => ({
  kind: 'dimension chain',
  points: [0, 34, 74, 112].map((at) => ({ x: 600 + at * x, y: 600 + at * y })),
  texts: ['2\'-10"', '3\'-3 7/8"', '3\'-2 1/8"'],
  total: null,
  off: 0.36,
});

const leadersOf = (atoms: readonly Atom[]) =>
  atoms.flatMap((atom) => {
    if (atom.do !== 'stroke' || atom.outline.length !== 2) return [];
    const [from, to] = atom.outline;
    return from?.go === 'move' && to?.go === 'line' ? [{ start: from, end: to }] : [];
  });

const boxes = (atoms: readonly Atom[]) => textsOf(atoms).map(textBox);

describe('ledOutRow', () => {
  it('[D34] stands beyond a wall that would run through its texts, but not beyond a thin line', () => {
    const at = { origin: { x: 0, y: 1200 }, scale: 1 / 120 };
    const [plain] = boxes(explode([chainAlong(1, 0)], at));
    if (plain === undefined) throw new Error('expected three lengths');
    const across = (pen: 'building' | 'thin'): Primitive => ({
      kind: 'polyline',
      points: [0, 1200].map((x) => ({ x, y: 1200 - plain.centre.y * 120 })),
      closed: false,
      pen,
    });
    const heights = (pen: 'building' | 'thin'): number[] =>
      boxes(explode([across(pen), chainAlong(1, 0)], at)).map(({ centre }) => centre.y);
    expect(heights('thin')).toEqual([plain.centre.y, plain.centre.y, plain.centre.y]);
    for (const y of heights('building'))
      expect(Math.abs(y - plain.centre.y)).toBeGreaterThan(plain.halfHeight);
  });

  it('[D34] leads no line through a text that is there', () => {
    const at = { origin: { x: 0, y: 1200 }, scale: 1 / 120 };
    const first = leadersOf(explode([chainAlong(1, 0)], at))[1];
    if (first === undefined) throw new Error('expected three leaders');
    const centre = { x: (first.start.x + first.end.x) / 2, y: (first.start.y + first.end.y) / 2 };
    const taken = [{ centre, halfWidth: 0.05, halfHeight: 0.04, angle: radians(0) }];
    const atoms = explode([chainAlong(1, 0)], at, { taken });
    const [box] = taken;
    if (box === undefined) throw new Error('expected the box');
    for (const { start, end } of leadersOf(atoms)) {
      const strip = {
        centre: { x: (start.x + end.x) / 2, y: (start.y + end.y) / 2 },
        halfWidth: Math.hypot(end.x - start.x, end.y - start.y) / 2,
        halfHeight: 0.001,
        angle: radians(Math.atan2(end.y - start.y, end.x - start.x)),
      };
      expect(boxesOverlap(strip, box)).toBe(false);
    }
  });

  it.each([
    ['east', 1, 0],
    ['north', 0, 1],
    ['west', -1, 0],
    ['north-east', Math.SQRT1_2, Math.SQRT1_2],
  ])('[D27] going %s, lengths keep the order of their pieces', (_, x, y) => {
    const atoms = explode([chainAlong(x, y)], { origin: { x: 0, y: 1200 }, scale: 1 / 120 });
    const along = textsOf(atoms)
      .map(({ text, at }) => ({ text, station: at.x * x - at.y * y }))
      .sort((a, b) => a.station - b.station);
    expect(along.map(({ text }) => text)).toEqual(['2\'-10"', '3\'-3 7/8"', '3\'-2 1/8"']);
    const leaders = leadersOf(atoms);
    expect(leaders).toHaveLength(3);
    leaders.forEach((one, n) => {
      for (const other of leaders.slice(n + 1)) expect(segmentIntersection(one, other)).toBeNull();
    });
  });
});
