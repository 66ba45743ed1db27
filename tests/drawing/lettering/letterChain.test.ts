import { describe, expect, it } from 'vitest';
import { drawOnPaper, type Room } from '../../../src/drawing/drawOnPaper.ts';
import { textBox } from '../../../src/drawing/lettering/textBox.ts';
import type { Primitive } from '../../../src/drawing/primitive.ts';
import { boxesOverlap } from '../../geometry/boxesOverlap.ts';
import { radians } from '../../../src/units/radians.ts';
import { textsOf } from '../textsOf.ts';

const projection = { origin: { x: 0, y: 1200 }, scale: 1 / 120 };

/** Six bays and a gate on 64 ft of fence, which lies 5 in down the paper. */
const chain: Primitive = {
  kind: 'dimension chain',
  points: [0, 108, 216, 324, 444, 552, 660, 768].map((x) => ({ x: 120 + x, y: 600 })),
  texts: [...Array(3).fill('9\'-0"'), '10\'-0"\n9\'-9" clear', ...Array(3).fill('9\'-0"')],
  total: '64\'-0"',
  off: 0.36,
  stretches: [
    { from: 0, to: 3, text: '27\'-0"' },
    { from: 3, to: 4, text: '10\'-0"\n9\'-9" clear' },
    { from: 4, to: 7, text: '27\'-0"' },
  ],
};

const heights = (more: readonly Primitive[], room: Room = {}) =>
  textsOf(drawOnPaper([...more, chain], projection, room).atoms).map(({ text, at }) => ({
    text,
    off: 5 - at.y,
  }));

describe('letterChain', () => {
  it('[D112] bays stand nearest the fence, then stretches and openings, then the whole', () => {
    const found = heights([]);
    const offs = (text: string) => found.filter((one) => one.text === text).map(({ off }) => off);
    const [bays, stretches, whole] = [offs('9\'-0"'), offs('27\'-0"'), offs('64\'-0"')];
    expect([bays.length, stretches.length, whole.length]).toEqual([6, 2, 1]);
    expect(Math.max(...bays)).toBeLessThan(Math.min(...stretches));
    expect(Math.max(...stretches)).toBeLessThan(Math.min(...whole));
  });

  it('[D112] what is clear of an opening is said once', () => {
    const found = heights([]);
    expect(found.filter(({ text }) => text.endsWith('clear'))).toHaveLength(1);
    expect(found.filter(({ text }) => text === '10\'-0"')).toHaveLength(2);
  });

  it('[D117] tiers step out where others are in the way', () => {
    const taken = [
      { centre: { x: 1.45, y: 4.64 }, halfWidth: 0.2, halfHeight: 0.1, angle: radians(0) },
    ] as const;
    const [free, stepped] = [heights([]), heights([], { taken })];
    expect(stepped.map(({ text }) => text)).toEqual(free.map(({ text }) => text));
    const least = (all: typeof free) => Math.min(...all.map(({ off }) => off));
    expect(least(stepped)).toBeGreaterThan(least(free) + 0.2);
  });

  it('[D117] tiers go to the other side on paper before a chain is cut to its total', () => {
    const window = { minX: 0, minY: 4.6, maxX: 12, maxY: 9 };
    const sides = heights([], { window, thin: 'broken' });
    expect(sides).toHaveLength(heights([]).length);
    for (const { off } of sides) expect(off).toBeLessThan(0);
  });

  it('[D114] bays written as one stand clear of the ticks and extension lines of their posts', () => {
    const bays: Primitive = {
      kind: 'dimension chain',
      points: [0, 1, 2, 3, 4, 5, 6].map((n) => ({ x: 120 + 48 * n, y: 600 })),
      texts: Array(6).fill('4\'-0 1/16"'),
      total: '24\'-0 3/8"',
      off: -0.36,
      groups: [{ from: 0, to: 6, text: '6 bays at 4\'-0 1/16"' }],
    };
    const { atoms } = drawOnPaper([bays], projection);
    const group = textsOf(atoms).find(({ text }) => text.startsWith('6 bays'));
    if (group === undefined) throw new Error('expected a group');
    for (let n = 0; n <= 6; n++) {
      const x = 1 + 0.4 * n;
      const extension = { centre: { x, y: 5.2 }, halfWidth: 0.004, halfHeight: 0.16 };
      const tick = { centre: { x, y: 5.36 }, halfWidth: 0.033, halfHeight: 0.033 };
      for (const mark of [extension, tick])
        expect(boxesOverlap({ ...mark, angle: radians(0) }, textBox(group))).toBe(false);
    }
  });

  it('[D116] the name of a line breaks the line where it has no clear place beside it', () => {
    const points = [0, 1200].map((x) => ({ x, y: 600 }));
    // so close that no letters stand between them
    const near = [...Array(70).keys()].map((n) => 10 * (n - 35)).filter((off) => off !== 0);
    const beside = near.map((off): Primitive => ({
      kind: 'polyline',
      points: [0, 1200].map((x) => ({ x, y: 600 + off })),
      closed: false,
      pen: 'fence',
    }));
    const line: Primitive = { kind: 'polyline', points, closed: false, pen: 'boundary' };
    const name: Primitive = {
      kind: 'text',
      at: { x: 600, y: 600 },
      text: 'Lot line',
      size: 0.06,
      rise: 0.05,
      angle: radians(0),
      ink: 'boundary',
      weight: 'regular',
      on: [{ at: { x: 300, y: 600 }, angle: radians(0), long: 600 }],
    };
    const draw = (room: Room) => drawOnPaper([...beside, line, name], projection, room).atoms;
    const [on] = textsOf(draw({ thin: 'broken' }));
    expect(on === undefined ? NaN : textBox(on).centre).toMatchObject({ x: 2.5 });
    expect(textsOf(draw({}))[0]?.at.x).not.toBeCloseTo(2.5, 1);
  });
});
