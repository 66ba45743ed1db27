import type { Atom } from './atom.ts';
import type { Outline } from './outline.ts';

const moveOutline = (outline: Outline, dx: number, dy: number): Outline =>
  outline.map((step) => (step.go === 'close' ? step : { ...step, x: step.x + dx, y: step.y + dy }));

/** The same atoms farther to the right and down on the paper, in inches. */
export const moveAtoms = (atoms: readonly Atom[], dx: number, dy: number): Atom[] =>
  atoms.map((atom) => {
    if (atom.do === 'text') return { ...atom, at: { x: atom.at.x + dx, y: atom.at.y + dy } };
    const outline = moveOutline(atom.outline, dx, dy);
    if (atom.do !== 'clip') return { ...atom, outline };
    return { ...atom, outline, atoms: moveAtoms(atom.atoms, dx, dy) };
  });
