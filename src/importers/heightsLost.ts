import { phrase } from '../phrases/phrase.ts';

/** Tells how many lines of a file have heights that are not brought; nothing for none. */
export const heightsLost = (lines: number): string[] =>
  lines === 0
    ? []
    : [
        phrase`Lines lie flat on a yard: the heights of ${lines.toLocaleString('en-US')} are left out`,
      ];
