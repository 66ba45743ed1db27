import type { Bounds } from '../../geometry/bounds.ts';
import { corners } from '../../geometry/orientedBox.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import type { Atom } from '../atom.ts';
import { textBox } from '../lettering/textBox.ts';
import { outlinePieces } from '../explode/outlinePieces.ts';

/** The room that atoms take on the paper, inches; of what is clipped that of its clip. Null for none. */
export const atomBounds = (atoms: readonly Atom[]): Bounds | null => {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  const takeIn = ({ x, y }: PaperPoint): void => {
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  };
  for (const atom of atoms) {
    if (atom.do === 'text') corners(textBox(atom)).forEach(takeIn);
    else for (const ends of outlinePieces(atom.outline)) ends.forEach(takeIn);
  }
  return minX > maxX ? null : { minX, minY, maxX, maxY };
};
