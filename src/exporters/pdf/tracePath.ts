import type { Outline, Step } from '../../drawing/outline.ts';
import { arcToBeziers } from '../../geometry/arcToBeziers.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { radians } from '../../units/radians.ts';
import { writePlace, type PageInk } from './pageInk.ts';

type ArcStep = Extract<Step, { go: 'arc' }>;

const moveTo = (ink: PageInk, { x, y }: PaperPoint): void => {
  writePlace(ink, x, y);
  ink.out.text('m\n');
};

const lineTo = (ink: PageInk, { x, y }: PaperPoint): void => {
  writePlace(ink, x, y);
  ink.out.text('l\n');
};

/** Puts an arc on the path as cubic curves; returns where it ends. */
const traceArc = (ink: PageInk, arc: ArcStep, from: PaperPoint | null): PaperPoint => {
  const { x, y, radius, start, sweep } = arc;
  // the paper's y runs down: the same turn as seen is negative here
  const curves = arcToBeziers<'paper'>({
    centre: { x, y },
    radius,
    start: radians(-start),
    sweep: radians(-sweep),
  });
  const first = curves[0]?.from ?? {
    x: x + radius * Math.cos(start),
    y: y - radius * Math.sin(start),
  };
  if (from === null) moveTo(ink, first as PaperPoint);
  else lineTo(ink, first as PaperPoint);
  for (const { leaving, arriving, to } of curves) {
    writePlace(ink, leaving.x, leaving.y);
    writePlace(ink, arriving.x, arriving.y);
    writePlace(ink, to.x, to.y);
    ink.out.text('c\n');
  }
  return curves.at(-1)?.to ?? (first as PaperPoint);
};

/** Lays an outline down as the current path of a PDF page; arcs become cubic curves. */
export const tracePath = (ink: PageInk, outline: Outline): void => {
  let at: PaperPoint | null = null;
  for (const step of outline) {
    if (step.go === 'close') {
      ink.out.text('h\n');
      continue;
    }
    if (step.go === 'arc') {
      at = traceArc(ink, step, at);
      continue;
    }
    if (step.go === 'move') moveTo(ink, step);
    else lineTo(ink, step);
    at = step;
  }
};
