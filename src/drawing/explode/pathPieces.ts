import type { PaperPoint } from '../../geometry/point.ts';
import type { ArcStep, Outline } from '../outline.ts';
import { onArc } from './onPiece.ts';

interface OnPath {
  /** Whether it goes on from the end of the piece before it. */
  readonly begins: 'anew' | 'there';
}

/** One straight piece or arc of an outline; lengths in paper inches. */
export type PathPiece = OnPath &
  (
    | { readonly kind: 'straight'; readonly from: PaperPoint; readonly to: PaperPoint }
    | { readonly kind: 'arc'; readonly step: ArcStep; readonly long: number }
  );

/** Nearer than this an arc begins where the path stands, paper inches. */
const near = 1e-6;

/** The pieces of an outline one after the other, its closing lines among them. */
export const pathPieces = (outline: Outline): PathPiece[] => {
  const pieces: PathPiece[] = [];
  let start: PaperPoint | null = null;
  let here: PaperPoint | null = null;
  let begins: OnPath['begins'] = 'anew';
  const lineTo = (to: PaperPoint): void => {
    const from = here ?? to;
    if (Math.hypot(to.x - from.x, to.y - from.y) > near) {
      pieces.push({ kind: 'straight', begins, from, to });
      begins = 'there';
    }
    here = to;
  };
  for (const step of outline) {
    if (step.go === 'arc') {
      const first = onArc(step, 0);
      start ??= first;
      lineTo(first);
      pieces.push({ kind: 'arc', begins, step, long: Math.abs(step.sweep) * step.radius });
      begins = 'there';
      here = onArc(step, 1);
    } else if (step.go === 'move') {
      start = here = { x: step.x, y: step.y };
      begins = 'anew';
    } else if (step.go === 'line') lineTo({ x: step.x, y: step.y });
    else lineTo(start ?? here ?? { x: 0, y: 0 });
  }
  return pieces;
};
