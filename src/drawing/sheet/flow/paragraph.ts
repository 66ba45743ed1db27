import type { Ink } from '../../ink.ts';
import { wrapText } from '../../wrapText.ts';
import { letters, lineSpacing } from '../letters.ts';
import { lineOfText } from '../lineOfText.ts';
import type { Block } from './block.ts';

/** A paragraph of body text across a column, line by line. */
export const paragraph = (text: string, width: number, ink: Ink = 'text'): Block[] => {
  const height = letters.body * lineSpacing;
  return wrapText(text, { width, size: letters.body, weight: 'regular' }).map((line) => ({
    height,
    atoms: lineOfText(line, 0, height / 2, { ink }),
  }));
};
