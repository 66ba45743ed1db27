import { expect, it } from 'vitest';
import { traceOutline, type PathContext } from '../../src/canvas/traceOutline.ts';
import type { Outline } from '../../src/drawing/outline.ts';

const traced = (outline: Outline, scale: number): unknown[][] => {
  const calls: unknown[][] = [];
  const note =
    (name: string) =>
    (...given: unknown[]) => {
      calls.push([name, ...given]);
    };
  const context: PathContext = {
    beginPath: note('begin'),
    moveTo: note('move'),
    lineTo: note('line'),
    arc: note('arc'),
    closePath: note('close'),
  };
  traceOutline(context, outline, scale);
  return calls;
};

it('scales paper inches and closes paths', () => {
  const corner: Outline = [{ go: 'move', x: 0, y: 1 }, { go: 'line', x: 2, y: 1 }, { go: 'close' }];
  expect(traced(corner, 96)).toEqual([['begin'], ['move', 0, 96], ['line', 192, 96], ['close']]);
});

it('turns counter-clockwise arcs into the canvas’s clockwise angles', () => {
  const quarter: Outline = [{ go: 'arc', x: 1, y: 1, radius: 1, start: 0.25, sweep: Math.PI / 2 }];
  expect(traced(quarter, 10)[1]).toEqual(['arc', 10, 10, 10, -0.25, -0.25 - Math.PI / 2, true]);
});

it('draws a whole circle whichever way it turns', () => {
  for (const sweep of [2 * Math.PI, -2 * Math.PI]) {
    const circle: Outline = [{ go: 'arc', x: 0, y: 0, radius: 1, start: 1, sweep }];
    expect(traced(circle, 1)[1]).toEqual(['arc', 0, 0, 1, 0, -sweep, sweep > 0]);
  }
});
