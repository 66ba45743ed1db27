import type { Block } from './block.ts';
import { paragraph } from './paragraph.ts';
import { stackBlocks } from './stackBlocks.ts';

/** A paragraph of more lines may part between any two of them. */
const most = 12;

/** Under the paragraph, paper inches. */
const space: Block = { height: 0.07, atoms: [] };

/**
 * A paragraph of body text that is not broken over two columns, with room under it; only one too
 * long to be kept together may go on elsewhere.
 */
export const unbroken = (text: string, width: number): Block[] => {
  const lines = paragraph(text, width);
  return lines.length > most ? [...lines, space] : [stackBlocks([...lines, space])];
};
