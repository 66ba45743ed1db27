import { expect, it } from 'vitest';
import type { Fill, Stroke } from '../../../src/drawing/atom.ts';
import { circleOutline, rectangleOutline } from '../../../src/drawing/explode/polylineOutline.ts';
import type { Outline } from '../../../src/drawing/outline.ts';
import { pens } from '../../../src/drawing/pens.ts';
import { isEdgeOf } from '../../../src/exporters/pdf/isEdgeOf.ts';

const round = circleOutline({ x: 2, y: 3 }, 0.5);
const filled = (outline: Outline, opacity = 1): Fill => ({
  do: 'fill',
  ink: 'paper',
  opacity,
  outline,
});
const stroked = (outline: Outline): Stroke => ({ do: 'stroke', pen: pens.post, outline });

const turned = round.map((step) => ({ ...step, sweep: 1 })) as Outline;

it.each<[string, Fill, Outline, boolean]>([
  ['the very outline', filled(round), round, true],
  ['an outline alike', filled(round), circleOutline({ x: 2, y: 3 }, 0.5), true],
  ['another round', filled(round), circleOutline({ x: 2, y: 3 }, 0.6), false],
  ['a part of a round', filled(round), turned, false],
  ['another figure', filled(rectangleOutline({ x: 0, y: 0 }, 1, 1)), round, false],
  ['what is seen through', filled(round, 0.5), round, false],
  ['an outline that goes on', filled(round), [...round, { go: 'close' }], false],
])('[X1] of %s', (_, fill, edge, is) => {
  expect(isEdgeOf(fill, stroked(edge))).toBe(is);
});
