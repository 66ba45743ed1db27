import { describe, expect, it } from 'vitest';
import { drawOnPaper } from '../../../src/drawing/drawOnPaper.ts';
import { textBox } from '../../../src/drawing/lettering/textBox.ts';
import type { Primitive } from '../../../src/drawing/primitive.ts';
import { boxesOverlap } from '../../../src/geometry/boxesOverlap.ts';
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
});
