import type { Aim } from './aim.ts';
import type { Input } from './input.ts';

/** Where the hand was last; null before it was anywhere. */
export type Pointer = Pick<Aim, 'at' | 'reach' | 'free'> | null;

/** The pointer of an input that has one, else the one known before. */
export const pointerOf = (input: Input, before: Pointer): Pointer => {
  if (input.do !== 'press' && input.do !== 'move' && input.do !== 'release') return before;
  const { at, reach, free } = input;
  return { at, reach, free };
};
