import type { jsPDF } from 'jspdf';
import type { Outline, Step } from '../../drawing/outline.ts';
import { arcToBeziers } from '../../geometry/arcToBeziers.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { radians } from '../../units/radians.ts';
import { settled } from './settled.ts';

type ArcStep = Extract<Step, { go: 'arc' }>;

/** Puts an arc on the path as cubic curves; returns where it ends. */
const traceArc = (doc: jsPDF, arc: ArcStep, from: PaperPoint | null): PaperPoint => {
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
  if (from === null) doc.moveTo(settled(first.x), settled(first.y));
  else doc.lineTo(settled(first.x), settled(first.y));
  for (const { leaving, arriving, to } of curves) {
    const [x1, y1] = [settled(leaving.x), settled(leaving.y)];
    const [x2, y2] = [settled(arriving.x), settled(arriving.y)];
    doc.curveTo(x1, y1, x2, y2, settled(to.x), settled(to.y));
  }
  return curves.at(-1)?.to ?? first;
};

/** Lays an outline down as the current path of a PDF page; arcs become cubic curves. */
export const tracePath = (doc: jsPDF, outline: Outline): void => {
  let at: PaperPoint | null = null;
  for (const step of outline) {
    if (step.go === 'close') {
      doc.close();
      continue;
    }
    if (step.go === 'arc') {
      at = traceArc(doc, step, at);
      continue;
    }
    if (step.go === 'move') doc.moveTo(settled(step.x), settled(step.y));
    else doc.lineTo(settled(step.x), settled(step.y));
    at = step;
  }
};
