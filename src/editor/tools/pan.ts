import type { Tool } from '../tool.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The pad moves under the hand by itself; the document is not touched. */
export const pan: Tool<null> = {
  idle: null,
  on: (state) => ({ state }),
  preview: () => [],
  prompt: () => phrase`Drag to move the pad`,
  rest: () => null,
};
