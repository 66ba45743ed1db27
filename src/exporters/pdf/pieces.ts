import type { Atom, Clip, Fill, Stroke, Text } from '../../drawing/atom.ts';

/** What of a page hangs together: a text, what is drawn between two texts, a clip. */
export type Piece =
  | { readonly is: 'text'; readonly atoms: readonly [Text] }
  | { readonly is: 'drawn'; readonly atoms: readonly (Stroke | Fill)[] }
  | { readonly is: 'clip'; readonly clip: Clip };

/** Atoms in their order as pieces: what is drawn together is one. */
export const pieces = (atoms: readonly Atom[]): readonly Piece[] => {
  const found: Piece[] = [];
  let drawn: (Stroke | Fill)[] = [];
  for (const atom of atoms) {
    if (atom.do === 'text' || atom.do === 'clip') {
      drawn = [];
      found.push(atom.do === 'text' ? { is: 'text', atoms: [atom] } : { is: 'clip', clip: atom });
      continue;
    }
    if (drawn.length === 0) found.push({ is: 'drawn', atoms: drawn });
    drawn.push(atom);
  }
  return found;
};
