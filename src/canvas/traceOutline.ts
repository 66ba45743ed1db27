import type { Outline, Step } from '../drawing/outline.ts';

/** What a path is traced on: a canvas context, or a recorder in a test. */
export type PathContext = Pick<
  CanvasRenderingContext2D,
  'beginPath' | 'moveTo' | 'lineTo' | 'arc' | 'closePath'
>;

const fullTurn = 2 * Math.PI - 1e-9;

type Arc = Extract<Step, { readonly go: 'arc' }>;

const traceArc = (context: PathContext, step: Arc, scale: number): void => {
  // a canvas measures angles clockwise, an outline counter-clockwise
  const whole = Math.abs(step.sweep) >= fullTurn;
  const sweep = whole ? 2 * Math.PI * Math.sign(step.sweep) : step.sweep;
  const start = whole ? 0 : -step.start;
  const [x, y, radius] = [step.x * scale, step.y * scale, step.radius * scale];
  context.arc(x, y, radius, start, start - sweep, sweep > 0);
};

/** Begins a path on the canvas and traces an outline on it, paper inches times `scale` (px). */
export const traceOutline = (context: PathContext, outline: Outline, scale: number): void => {
  context.beginPath();
  for (const step of outline) {
    if (step.go === 'close') context.closePath();
    else if (step.go === 'arc') traceArc(context, step, scale);
    else if (step.go === 'move') context.moveTo(step.x * scale, step.y * scale);
    else context.lineTo(step.x * scale, step.y * scale);
  }
};
