import { describe, expect, it } from 'vitest';
import { pageAtoms } from '../../src/drawing/sheet/pageAtoms.ts';
import type { Atom } from '../../src/drawing/atom.ts';
import { moveAtoms } from '../../src/drawing/moveAtoms.ts';
import { scene } from '../exporters/scene.ts';

/** Every number of some atoms that is a place on the paper, in order: x, y, x, y. */
const places = (atoms: readonly Atom[]): number[] =>
  atoms.flatMap((atom) => {
    if (atom.do === 'text') return [atom.at.x, atom.at.y];
    const own = atom.outline.flatMap((step) => (step.go === 'close' ? [] : [step.x, step.y]));
    return atom.do === 'clip' ? [...own, ...places(atom.atoms)] : own;
  });

describe('moveAtoms', () => {
  it('moves every place, in clips too, and nothing else', () => {
    const before = places(pageAtoms(scene));
    const after = places(moveAtoms(pageAtoms(scene), 2, -1));
    expect(after).toEqual(before.map((value, n) => value + (n % 2 === 0 ? 2 : -1)));
    expect(moveAtoms(moveAtoms(pageAtoms(scene), 2, -1), -2, 1)).toEqual(pageAtoms(scene));
  });
});
