import type { ArcStep, Outline } from '../../drawing/outline.ts';
import { arcShape, type ArcCurve } from '../../geometry/arcShape.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import { writePlace, type PageInk } from './pageInk.ts';

const moveTo = (ink: PageInk, { x, y }: PaperPoint): void => {
  writePlace(ink, x, y);
  ink.out.text('m\n');
};

const lineTo = (ink: PageInk, { x, y }: PaperPoint): void => {
  writePlace(ink, x, y);
  ink.out.text('l\n');
};

/** Arcs of one shape come by the thousand, as holes and ends of fence: the last of each radius is remembered. */
const shapes = new Map<
  number,
  Pick<ArcStep, 'start' | 'sweep'> & { readonly curves: readonly ArcCurve[] }
>();
const mostShapes = 1000;

/** The curves of an arc; the paper's y runs down, so the same turn as seen is negative here. */
const curvesOf = ({ radius, start, sweep }: ArcStep): readonly ArcCurve[] => {
  const known = shapes.get(radius);
  if (known !== undefined && known.start === start && known.sweep === sweep) return known.curves;
  const curves = arcShape(radius, -start, -sweep);
  if (shapes.size >= mostShapes) shapes.clear();
  shapes.set(radius, { start, sweep, curves });
  return curves;
};

/** Puts an arc on the path as cubic curves; returns where it ends. */
const traceArc = (ink: PageInk, arc: ArcStep, from: PaperPoint | null): PaperPoint => {
  const { x, y, radius, start } = arc;
  const curves = curvesOf(arc);
  const first = curves[0]?.from ?? { x: radius * Math.cos(start), y: -radius * Math.sin(start) };
  writePlace(ink, x + first.x, y + first.y);
  ink.out.text(from === null ? 'm\n' : 'l\n');
  let end = first;
  for (const curve of curves) {
    const [fromX, fromY] = [x + curve.from.x, y + curve.from.y];
    const [toX, toY] = [x + curve.to.x, y + curve.to.y];
    writePlace(ink, fromX + curve.leaving.x, fromY + curve.leaving.y);
    writePlace(ink, toX + curve.arriving.x, toY + curve.arriving.y);
    writePlace(ink, toX, toY);
    ink.out.text('c\n');
    end = curve.to;
  }
  return { x: x + end.x, y: y + end.y } as PaperPoint;
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
