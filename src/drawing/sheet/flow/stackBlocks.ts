import { moveAtoms } from '../../moveAtoms.ts';
import type { Block } from './block.ts';

/** Blocks one under the other as one block that is not broken. */
export const stackBlocks = (blocks: readonly Block[]): Block => {
  let height = 0;
  const atoms = blocks.flatMap((block) => {
    const moved = height === 0 ? block.atoms : moveAtoms(block.atoms, 0, height);
    height += block.height;
    return moved;
  });
  return { height, atoms };
};
