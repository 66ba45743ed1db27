import { printable } from '../../printable.ts';
import { shorten } from '../../shorten.ts';
import { textWidth } from '../../textWidth.ts';
import { letters } from '../letters.ts';
import type { Block, Row } from './block.ts';
import { stackBlocks } from './stackBlocks.ts';
import { phrase } from '../../../phrases/phrase.ts';

const continued = phrase`, continued`;

/** The name of a group that goes on, cut to `width` (paper inches) so that it still says so. */
const continuedName = (name: string, width: number): string => {
  const room = width - textWidth(continued, letters.body, 'bold');
  return `${shorten(printable(name), room, letters.body, 'bold')}${continued}`;
};

/** How the name of a group is laid out over a row, the first being 0, and the room that it has, paper inches. */
export interface GroupLook {
  readonly lay: (name: string, row: number) => Block;
  readonly width: number;
}

/**
 * Rows with the names of their groups, one for each row: a name stands over the first row of its
 * group, never parted from it, and again, as continued, over any other that the group is resumed with
 * elsewhere. Rows without a name stay as they are.
 */
export const inGroups = (
  rows: readonly Block[],
  groups: readonly string[],
  { lay, width }: GroupLook,
): Row[] =>
  rows.map((row, n) => {
    const name = groups[n];
    if (name === undefined) return row;
    if (name !== groups[n - 1]) return stackBlocks([lay(name, n), row]);
    return { ...row, resumed: lay(continuedName(name, width), n) };
  });
