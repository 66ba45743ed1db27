import type { Ink } from '../../ink.ts';
import { wrapText } from '../../wrapText.ts';
import { letters, lineSpacing } from '../letters.ts';
import { lineOfText } from '../lineOfText.ts';
import type { Block } from './block.ts';

/** A paragraph of body text across a column; its lines are blocks, so that it can go on elsewhere. */
export const paragraph = (text: string, width: number, ink: Ink = 'text'): Block[] =>
  wrapText(text, { width, size: letters.body, weight: 'regular' }).map((line) => ({
    height: letters.body * lineSpacing,
    atoms: lineOfText(line, 0, (letters.body * lineSpacing) / 2, { ink }),
  }));
