import type { Atom } from '../../atom.ts';
import { moveAtoms } from '../../moveAtoms.ts';
import type { Block } from './block.ts';

/** Blocks one under the other as one block that is not broken. */
export const stackBlocks = (blocks: readonly Block[]): Block => {
  let height = 0;
  const atoms: Atom[] = [];
  for (const block of blocks) {
    const moved = height === 0 ? block.atoms : moveAtoms(block.atoms, 0, height);
    for (const atom of moved) atoms.push(atom);
    height += block.height;
  }
  return { height, atoms };
};
