import type { PaperPoint } from '../../geometry/point.ts';
import type { Outline, Step } from '../outline.ts';

/** Straight pieces through points on the paper; nothing for fewer than two. */
export const polylineOutline = (points: readonly PaperPoint[], closed: boolean): Outline =>
  points.length < 2
    ? []
    : [
        ...points.map(({ x, y }, n) => ({ go: n === 0 ? 'move' : 'line', x, y }) as const),
        ...(closed ? [{ go: 'close' } as const] : []),
      ];

/** Pieces apart from each other, each from its first point to its second. */
export const segmentsOutline = (
  segments: readonly (readonly [PaperPoint, PaperPoint])[],
): Outline => {
  const steps: Step[] = [];
  for (const [from, to] of segments) {
    steps.push({ go: 'move', x: from.x, y: from.y }, { go: 'line', x: to.x, y: to.y });
  }
  return steps;
};

/** A whole circle on the paper, radius in paper inches. */
export const circleOutline = ({ x, y }: PaperPoint, radius: number): Outline => [
  { go: 'move', x: x + radius, y },
  { go: 'arc', x, y, radius, start: 0, sweep: 2 * Math.PI },
  { go: 'close' },
];

/** An upright rectangle: its upper left corner, its width to the right and its height down. */
export const rectangleOutline = ({ x, y }: PaperPoint, width: number, height: number): Outline =>
  polylineOutline(
    [
      { x, y },
      { x: x + width, y },
      { x: x + width, y: y + height },
      { x, y: y + height },
    ],
    true,
  );
