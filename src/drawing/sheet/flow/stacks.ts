import type { Block, Stack } from './block.ts';
import { nothing } from './block.ts';
import { stackBlocks } from './stackBlocks.ts';

/** One block that is not broken, with room before it. */
export const oneBlock = (block: Block, gap = 0.2): Stack => ({
  head: nothing,
  again: nothing,
  rows: [block],
  gap,
});

/** Blocks that may part anywhere, such as paragraphs; the head stays with the first. */
export const loose = (head: Block, rows: readonly Block[], gap = 0.2): Stack => ({
  head,
  again: nothing,
  rows,
  gap,
});

/** A stack with a block over its head, so that the two are never parted. */
export const under = (block: Block, stack: Stack): Stack => ({
  ...stack,
  head: stackBlocks([block, stack.head]),
});
