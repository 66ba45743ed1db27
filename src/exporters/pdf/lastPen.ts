import type { Atom } from '../../drawing/atom.ts';
import type { Pen } from '../../drawing/pen.ts';

/** The pen of the last stroke that some atoms paint; null where they have none. */
export const lastPen = (atoms: readonly Atom[]): Pen | null => {
  for (let n = atoms.length - 1; n >= 0; n -= 1) {
    const atom = atoms[n];
    if (atom?.do === 'stroke') return atom.pen;
    const within = atom?.do === 'clip' ? lastPen(atom.atoms) : null;
    if (within !== null) return within;
  }
  return null;
};
