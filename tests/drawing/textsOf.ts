import type { Atom, Text } from '../../src/drawing/atom.ts';
import { textBox } from '../../src/drawing/lettering/textBox.ts';
import { boxesOverlap } from '../geometry/boxesOverlap.ts';
import { distance } from '../../src/geometry/distance.ts';
import type { OrientedBox } from '../../src/geometry/orientedBox.ts';

/** Every text of a drawing, clipped ones too. */
export const textsOf = (atoms: readonly Atom[]): Text[] =>
  atoms.flatMap((atom) => {
    if (atom.do === 'clip') return textsOf(atom.atoms);
    return atom.do === 'text' ? [atom] : [];
  });

const isNear = (a: OrientedBox<'paper'>, b: OrientedBox<'paper'>): boolean =>
  distance(a.centre, b.centre) <
  Math.hypot(a.halfWidth, a.halfHeight) + Math.hypot(b.halfWidth, b.halfHeight);

/** Every pair of texts that lie on each other, as "one | other". */
export const overlapsOf = (atoms: readonly Atom[]): string[] => {
  const boxes = textsOf(atoms).map((text) => ({ text: text.text, box: textBox(text) }));
  return boxes.flatMap((one, n) =>
    boxes
      .slice(n + 1)
      .filter((other) => isNear(one.box, other.box) && boxesOverlap(one.box, other.box))
      .map((other) => `${one.text} | ${other.text}`),
  );
};
