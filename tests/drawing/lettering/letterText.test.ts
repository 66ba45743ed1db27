import { describe, expect, it } from 'vitest';
import { drawOnPaper, type Room } from '../../../src/drawing/drawOnPaper.ts';
import { textBox } from '../../../src/drawing/lettering/textBox.ts';
import type { Primitive } from '../../../src/drawing/primitive.ts';
import { boxesOverlap } from '../../geometry/boxesOverlap.ts';
import { corners } from '../../../src/geometry/orientedBox.ts';
import { radians } from '../../../src/units/radians.ts';
import { textsOf } from '../textsOf.ts';

const projection = { origin: { x: 0, y: 1200 }, scale: 1 / 120 };

const name = (x: number, y: number, more: Partial<Primitive> = {}): Primitive =>
  ({
    kind: 'text',
    at: { x, y },
    text: '12',
    size: 0.14,
    rise: 0.08,
    angle: radians(0),
    ink: 'text',
    weight: 'regular',
    ...more,
  }) as Primitive;

/** An upright fence through x = 600. */
const fence: Primitive = {
  kind: 'fence',
  of: 'chain link',
  points: [
    { x: 600, y: 100 },
    { x: 600, y: 1100 },
  ],
  closed: false,
  pen: 'fence',
};

describe('letterText', () => {
  it('[D28] the name of a post on an upright fence stands beside the fence', () => {
    const [text] = textsOf(drawOnPaper([fence, name(600, 600)], projection).atoms);
    if (text === undefined) throw new Error('no name');
    const strip = { centre: { x: 5, y: 5 }, halfWidth: 0.05, halfHeight: 5, angle: radians(0) };
    expect(boxesOverlap(textBox(text), strip)).toBe(false);
  });

  it('[D28] a name keeps off the swing of a gate', () => {
    const swing: Primitive = {
      kind: 'arc',
      centre: { x: 600, y: 600 },
      radius: 48,
      start: radians(0),
      sweep: radians(Math.PI / 2),
      pen: 'swing',
    };
    // at 1 in = 10 ft the name would stand on the middle of the swing
    const at = 600 + 48 * Math.SQRT1_2;
    const [text] = textsOf(drawOnPaper([swing, name(at, at, { rise: 0 })], projection).atoms);
    if (text === undefined) throw new Error('no name');
    const { centre, halfWidth, halfHeight } = textBox(text);
    const far = Math.hypot(Math.abs(centre.x - 5) + halfWidth, Math.abs(centre.y - 5) + halfHeight);
    const near = Math.hypot(
      Math.max(0, Math.abs(centre.x - 5) - halfWidth),
      Math.max(0, Math.abs(centre.y - 5) - halfHeight),
    );
    const misses = far < 0.4 || near > 0.4 || centre.x < 5 - halfWidth || centre.y > 5 + halfHeight;
    expect(misses).toBe(true);
  });

  it('[D28] a name that would rather be clear is led out where others lie on a line', () => {
    // a name of two lines lies on one of these wherever it stands between them
    const lines = Array.from({ length: 9 }, (_, n): Primitive => ({
      kind: 'polyline',
      points: [
        { x: 480, y: 600 + (n - 4) * 36 },
        { x: 720, y: 600 + (n - 4) * 36 },
      ],
      closed: false,
      pen: 'thin',
    }));
    const label = (far: 'rather' | undefined) =>
      name(600, 600, { text: 'Gate\nopening', rise: 0, ...(far && { far }) } as Partial<Primitive>);
    const reach = (far: 'rather' | undefined): number => {
      const texts = textsOf(drawOnPaper([...lines, label(far)], projection).atoms);
      expect(texts).toHaveLength(2);
      return Math.hypot((texts[0]?.at.x ?? 0) - 5, (texts[0]?.at.y ?? 0) - 5);
    };
    expect(reach(undefined)).toBeLessThan(0.5);
    expect(reach('rather')).toBeGreaterThan(0.7);
  });

  it('[D28] a name of two lines that is moved away has a leader to its place', () => {
    // room taken all round the point, but for one and a half heights above and below
    const taken = [{ centre: { x: 5, y: 5 }, halfWidth: 2, halfHeight: 0.4, angle: radians(0) }];
    const label = name(600, 600, { text: 'Gate\nopening', rise: 0 } as Partial<Primitive>);
    const { atoms } = drawOnPaper([label], projection, { taken });
    expect(textsOf(atoms)).toHaveLength(2);
    expect(atoms.some((atom) => atom.do === 'stroke')).toBe(true);
  });

  it('[D29] of numbers that would run together none is written, and each is named', () => {
    const close = name(600, 600, { apart: { x: 24, y: 0 } } as Partial<Primitive>);
    expect(drawOnPaper([close], projection)).toMatchObject({ atoms: [], left: ['12'] });
  });

  it('[D29] a number far enough from the next is written, beside it or above it', () => {
    for (const apart of [
      { x: 60, y: 0 },
      { x: 0, y: -24 },
    ]) {
      const { left } = drawOnPaper([name(600, 600, { apart } as Partial<Primitive>)], projection);
      expect(left).toEqual([]);
    }
  });

  it('[D28] a gate is named in sight where that can be, and not past the edge of what is shown', () => {
    const gate = name(600, 600, { text: 'Drive gate\nopening 10 ft', rise: 0, far: 'rather' });
    const shown = { minX: 0, minY: 0, maxX: 5.3, maxY: 10 };
    const out = (room: Room) =>
      textsOf(drawOnPaper([fence, gate], projection, room).atoms).filter((text) =>
        corners(textBox(text)).some(({ x }) => x > shown.maxX),
      );
    expect(out({ shown })).toEqual([]);
    // so narrow that it must hang over: it is still written
    const narrow = { shown: { ...shown, minX: 4.9 } };
    expect(textsOf(drawOnPaper([fence, gate], projection, narrow).atoms).length).toBe(2);
  });

  it('[D28] the leader of the name of a gate goes round a house', () => {
    const corner = (x: number, y: number) => ({ x, y });
    const house: Primitive = {
      kind: 'polyline',
      points: [corner(300, 610), corner(900, 610), corner(900, 635), corner(300, 635)],
      closed: true,
      pen: 'building',
    };
    // lines below as close as its letters are high, and farther down than the house is up
    const lines = [590, 570, 550, 530, 510, 490, 470].map((y): Primitive => ({
      kind: 'polyline',
      points: [corner(0, y), corner(1200, y)],
      closed: false,
      pen: 'thin',
    }));
    const gate = name(600, 600, { text: 'Walk gate\nopening 4 ft', rise: 0, far: 'rather' });
    const { atoms } = drawOnPaper([house, ...lines, gate], projection);
    const [text] = textsOf(atoms);
    if (text === undefined) throw new Error('no name');
    // the house ends 4.92 in down the paper, the gate is at 5
    expect(text.at.y).toBeGreaterThan(5);
  });
});
