import type { Atom } from '../../../src/drawing/atom.ts';
import { outlinePieces } from '../../../src/drawing/explode/outlinePieces.ts';
import type { Pen } from '../../../src/drawing/pen.ts';
import { boundsOf, type Bounds } from '../../../src/geometry/bounds.ts';

/** The room that each stroke of a pen takes, times a scale: inches on the ground. */
export const boxesBy = (atoms: readonly Atom[], pen: Pen, ratio: number): Bounds[] =>
  atoms.flatMap((atom) => {
    if (atom.do !== 'stroke' || atom.pen !== pen) return [];
    const box = boundsOf(outlinePieces(atom.outline).flat());
    if (box === null) return [];
    const { minX, minY, maxX, maxY } = box;
    return [{ minX: minX * ratio, minY: minY * ratio, maxX: maxX * ratio, maxY: maxY * ratio }];
  });

export const widthOf = ({ minX, maxX }: Bounds): number => maxX - minX;
export const heightOf = ({ minY, maxY }: Bounds): number => maxY - minY;
