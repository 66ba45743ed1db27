import type { PaperPoint } from '../../geometry/point.ts';
import type { Atom, Fill, Stroke } from '../atom.ts';
import { polylineOutline } from '../explode/polylineOutline.ts';
import type { Outline } from '../outline.ts';
import type { Pen } from '../pen.ts';

/** An outline drawn with a pen. */
export const inked = (pen: Pen, outline: Outline): Stroke => ({ do: 'stroke', pen, outline });

/** An outline that hides what lies behind it, drawn with a pen. */
export const hiding = (pen: Pen, outline: Outline): Atom[] => {
  const paper: Fill = { do: 'fill', ink: 'paper', opacity: 1, outline };
  return [paper, inked(pen, outline)];
};

/** The corners of an upright rectangle between two of them, as a closed outline. */
export const boxOutline = (a: PaperPoint, b: PaperPoint): Outline =>
  polylineOutline([a, { x: b.x, y: a.y }, b, { x: a.x, y: b.y }], true);
