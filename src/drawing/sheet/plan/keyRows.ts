import type { Atom } from '../../atom.ts';
import { moveAtoms } from '../../moveAtoms.ts';
import { textWidth } from '../../textWidth.ts';
import type { Block } from '../flow/block.ts';
import { letters } from '../letters.ts';
import { lineOfText } from '../lineOfText.ts';
import { signWidth, type KeyEntry } from './keySigns.ts';

const rowHeight = 0.23;
const apart = 0.25;

/** Signs and what they stand for, in rows across `width`, paper inches. */
export const keyRows = (entries: readonly KeyEntry[], width: number): Block => {
  const atoms: Atom[] = [];
  let [x, row] = [0, 0];
  for (const { sign, text, longest = text } of entries) {
    const lead = sign.length > 0 ? signWidth + 0.08 : 0;
    const own = lead + textWidth(longest, letters.small, 'regular');
    if (x > 0 && x + own > width) [x, row] = [0, row + 1];
    const y = (row + 0.5) * rowHeight;
    atoms.push(...moveAtoms(sign, x, y));
    atoms.push(...lineOfText(text, x + lead, y, { size: letters.small, width: width - lead }));
    x += own + apart;
  }
  return { height: (row + 1) * rowHeight, atoms };
};
