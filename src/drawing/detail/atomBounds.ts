import { boundsOf, type Bounds } from '../../geometry/bounds.ts';
import { corners } from '../../geometry/orientedBox.ts';
import type { PaperPoint } from '../../geometry/point.ts';
import type { Atom } from '../atom.ts';
import { textBox } from '../lettering/textBox.ts';
import { outlinePieces } from '../explode/outlinePieces.ts';

const pointsOf = (atom: Atom): PaperPoint[] =>
  atom.do === 'text' ? corners(textBox(atom)) : outlinePieces(atom.outline).flat();

/** The room that atoms take on the paper, inches; of what is clipped that of its clip. Null for none. */
export const atomBounds = (atoms: readonly Atom[]): Bounds | null =>
  boundsOf(atoms.flatMap(pointsOf));
