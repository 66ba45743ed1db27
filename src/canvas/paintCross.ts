import type { ScreenPoint } from '../geometry/point.ts';

const arm = 18;
const gap = 5;

/** Paints the crosshair that the arrow keys move, in CSS pixels. */
export const paintCross = (
  context: CanvasRenderingContext2D,
  { x, y }: ScreenPoint,
  colour: string,
): void => {
  context.save();
  context.strokeStyle = colour;
  context.lineWidth = 2;
  context.setLineDash([]);
  context.beginPath();
  for (const [dx, dy] of [
    [1, 0],
    [-1, 0],
    [0, 1],
    [0, -1],
  ] as const) {
    context.moveTo(x + dx * gap, y + dy * gap);
    context.lineTo(x + dx * arm, y + dy * arm);
  }
  context.stroke();
  context.restore();
};
