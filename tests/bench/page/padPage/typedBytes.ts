import type { Atom } from '../../../../src/drawing/atom.ts';

/** A number takes eight bytes, a letter two, what says of which kind something is one. */
const [ofNumber, ofLetter, ofKind] = [8, 2, 1] as const;

const outlineBytes = (outline: Exclude<Atom, { do: 'text' }>['outline']): number =>
  outline.reduce((sum, step) => {
    const numbers = step.go === 'close' ? 0 : step.go === 'arc' ? 5 : 2;
    return sum + ofKind + numbers * ofNumber;
  }, 0);

/** How many bytes atoms would take as typed arrays: every number of them, with a byte for each choice of a few. */
export const typedBytes = (atoms: readonly Atom[]): number =>
  atoms.reduce((sum, atom) => {
    if (atom.do === 'clip')
      return sum + ofKind + outlineBytes(atom.outline) + typedBytes(atom.atoms);
    // place, size, angle; align, baseline, weight, ink, halo
    if (atom.do === 'text') return sum + 6 * ofKind + 4 * ofNumber + atom.text.length * ofLetter;
    // width and dashes of the pen, or the opacity; the ink
    const paint = atom.do === 'stroke' ? 1 + atom.pen.dash.length : 1;
    return sum + 2 * ofKind + paint * ofNumber + outlineBytes(atom.outline);
  }, 0);
