import { setTape } from '../site/edits/setTape.ts';
import type { MarkId } from '../site/ids.ts';
import type { Site } from '../site/site.ts';
import type { Inches } from '../units/inches.ts';

/**
 * A site in which the tape reads what was typed between the marks of a chain: `lengths[n]` from mark n
 * to the next; where none was typed, or a mark comes twice in a row, nothing is said.
 */
export const taped = (
  site: Site,
  marks: readonly MarkId[],
  lengths: readonly (Inches | undefined)[],
): Site =>
  lengths.reduce((so, length, n) => {
    const [from, to] = [marks[n], marks[n + 1]];
    if (length === undefined || from === undefined || to === undefined || from === to) return so;
    return setTape(so, from, to, length);
  }, site);
