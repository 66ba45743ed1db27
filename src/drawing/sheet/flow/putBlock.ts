import type { Atom } from '../../atom.ts';
import { moveAtoms } from '../../moveAtoms.ts';
import type { Rect } from '../rect.ts';
import type { Block } from './block.ts';

/** The atoms of a block with its upper left corner at a place of the paper, inches. */
export const putBlock = (block: Block, { x, y }: Pick<Rect, 'x' | 'y'>): Atom[] =>
  moveAtoms(block.atoms, x, y);
