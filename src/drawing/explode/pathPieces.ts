import { lerp } from '../../geometry/lerp.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import type { ArcStep, Outline } from '../outline.ts';

interface OnPath {
  /** Whether it goes on from the end of the piece before it. */
  readonly begins: 'anew' | 'there';
  /** The point at a share of its length. */
  readonly at: (share: number) => PaperPoint;
}

/** One straight piece or arc of an outline; lengths in paper inches. */
export type PathPiece = OnPath &
  (
    | { readonly kind: 'straight'; readonly from: PaperPoint; readonly to: PaperPoint }
    | { readonly kind: 'arc'; readonly step: ArcStep; readonly long: number }
  );

/** Nearer than this an arc begins where the path stands, paper inches. */
const near = 1e-6;

const onArc =
  ({ x, y, radius, start, sweep }: ArcStep) =>
  (share: number): PaperPoint => ({
    x: x + radius * Math.cos(start + share * sweep),
    y: y - radius * Math.sin(start + share * sweep),
  });

/** The pieces of an outline one after the other, its closing lines among them. */
export const pathPieces = (outline: Outline): PathPiece[] => {
  const pieces: PathPiece[] = [];
  let start: PaperPoint | null = null;
  let here: PaperPoint | null = null;
  let begins: OnPath['begins'] = 'anew';
  const lineTo = (to: PaperPoint): void => {
    const from = here ?? to;
    if (Math.hypot(to.x - from.x, to.y - from.y) > near) {
      pieces.push({ kind: 'straight', begins, from, to, at: (share) => lerp(from, to, share) });
      begins = 'there';
    }
    here = to;
  };
  for (const step of outline) {
    if (step.go === 'arc') {
      const at = onArc(step);
      start ??= at(0);
      lineTo(at(0));
      pieces.push({ kind: 'arc', begins, step, at, long: Math.abs(step.sweep) * step.radius });
      begins = 'there';
      here = at(1);
    } else if (step.go === 'move') {
      start = here = { x: step.x, y: step.y };
      begins = 'anew';
    } else if (step.go === 'line') lineTo({ x: step.x, y: step.y });
    else lineTo(start ?? here ?? { x: 0, y: 0 });
  }
  return pieces;
};
