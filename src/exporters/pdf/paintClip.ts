import type { jsPDF } from 'jspdf';
import type { Outline } from '../../drawing/outline.ts';
import { tracePath } from './tracePath.ts';

/** Paints on the current page with only what lies within an outline showing, by the even-odd rule. */
export const paintClip = (doc: jsPDF, outline: Outline, paint: () => void): void => {
  doc.saveGraphicsState();
  tracePath(doc, outline);
  doc.clipEvenOdd();
  doc.discardPath();
  paint();
  doc.restoreGraphicsState();
};
