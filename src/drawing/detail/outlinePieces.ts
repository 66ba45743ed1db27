import type { PaperPoint } from '../../geometry/point.ts';
import type { Outline } from '../outline.ts';

/** A round is kept clear as straight pieces over no more than this, radians. */
const pieceOfTurn = Math.PI / 24;

/** The straight pieces of an outline; arcs as pieces of 7.5 degrees at most. */
export const outlinePieces = (outline: Outline): (readonly [PaperPoint, PaperPoint])[] => {
  const pieces: (readonly [PaperPoint, PaperPoint])[] = [];
  let [first, last]: [PaperPoint | null, PaperPoint | null] = [null, null];
  const goTo = (next: PaperPoint): void => {
    if (last !== null) pieces.push([last, next]);
    first ??= next;
    last = next;
  };
  for (const step of outline) {
    if (step.go === 'move') [first, last] = [null, null];
    if (step.go === 'move' || step.go === 'line') goTo({ x: step.x, y: step.y });
    if (step.go === 'close' && first !== null) goTo(first);
    if (step.go !== 'arc') continue;
    const count = Math.max(1, Math.ceil(Math.abs(step.sweep) / pieceOfTurn));
    for (let n = 0; n <= count; n++) {
      const angle = step.start + (step.sweep * n) / count;
      goTo({
        x: step.x + step.radius * Math.cos(angle),
        y: step.y - step.radius * Math.sin(angle),
      });
    }
  }
  return pieces;
};
