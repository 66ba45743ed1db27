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

it.each([
  ['the very outline', round, round, 1, true],
  ['an outline alike', round, circleOutline({ x: 2, y: 3 }, 0.5), 1, true],
  ['another round', round, circleOutline({ x: 2, y: 3 }, 0.6), 1, false],
  ['a part of a round', round, round.map((step) => ({ ...step, sweep: 1 })) as Outline, 1, false],
  ['the way there alone', rectangleOutline({ x: 0, y: 0 }, 1, 1), round, 1, false],
  ['what is seen through', round, round, 0.5, false],
  ['an outline that goes on', round, [...round, { go: 'close' }] as Outline, 1, false],
])('[X1] of %s', (_, own, edge, opacity, is) => {
  expect(isEdgeOf(filled(own, opacity), stroked(edge))).toBe(is);
});
