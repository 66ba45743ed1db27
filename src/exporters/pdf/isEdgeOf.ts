import type { Fill, Stroke } from '../../drawing/atom.ts';
import type { Step } from '../../drawing/outline.ts';

const isSame = (a: Step, b: Step | undefined): boolean => {
  if (a.go === 'close' || b === undefined || b.go === 'close') return a.go === b?.go;
  if (a.x !== b.x || a.y !== b.y) return false;
  if (a.go !== 'arc' || b.go !== 'arc') return a.go === b.go;
  return a.radius === b.radius && a.start === b.start && a.sweep === b.sweep;
};

/** Whether a stroke runs along the very outline of what is filled, with nothing to see through: one path does for both. */
export const isEdgeOf = ({ outline: own, opacity }: Fill, { outline }: Stroke): boolean =>
  opacity === 1 &&
  (own === outline ||
    (own.length === outline.length && own.every((step, n) => isSame(step, outline[n]))));
