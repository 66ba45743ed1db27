import type { Atom, Text } from './atom.ts';
import type { Outline, Step } from './outline.ts';

// steps are written out: there are many of them, and copies of all that they have are slow to make
const moveStep = (step: Step, dx: number, dy: number): Step => {
  if (step.go === 'close') return step;
  const [x, y] = [step.x + dx, step.y + dy];
  if (step.go !== 'arc') return { go: step.go, x, y };
  const { radius, start, sweep } = step;
  return { go: 'arc', x, y, radius, start, sweep };
};

const moveOutline = (outline: Outline, dx: number, dy: number): Outline => {
  const moved: Step[] = [];
  for (const step of outline) moved.push(moveStep(step, dx, dy));
  return moved;
};

// and so are texts, but for what only some of them have
const moveText = (own: Text, dx: number, dy: number): Text => {
  const { text, size, angle, align, baseline, weight, ink, halo, cell } = own;
  const at = { x: own.at.x + dx, y: own.at.y + dy };
  if (cell === undefined)
    return { do: 'text', text, at, size, angle, align, baseline, weight, ink, halo };
  return { do: 'text', text, at, size, angle, align, baseline, weight, ink, halo, cell };
};

const moveAtom = (atom: Atom, dx: number, dy: number): Atom => {
  switch (atom.do) {
    case 'text':
      return moveText(atom, dx, dy);
    case 'stroke':
      return { do: 'stroke', pen: atom.pen, outline: moveOutline(atom.outline, dx, dy) };
    case 'fill': {
      const { ink, opacity } = atom;
      return { do: 'fill', ink, opacity, outline: moveOutline(atom.outline, dx, dy) };
    }
    case 'clip': {
      const atoms = moveAtoms(atom.atoms, dx, dy);
      return { do: 'clip', outline: moveOutline(atom.outline, dx, dy), atoms };
    }
  }
};

/** The same atoms farther to the right and down on the paper, in inches. */
export const moveAtoms = (atoms: readonly Atom[], dx: number, dy: number): Atom[] => {
  const moved: Atom[] = [];
  for (const atom of atoms) moved.push(moveAtom(atom, dx, dy));
  return moved;
};
