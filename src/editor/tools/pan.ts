import type { Tool } from '../tool.ts';

/** The pad moves under the hand by itself; the document is not touched. */
export const pan: Tool<null> = {
  idle: null,
  on: (state) => ({ state }),
  preview: () => [],
  prompt: () => 'Drag to move the pad',
  rest: () => null,
};
