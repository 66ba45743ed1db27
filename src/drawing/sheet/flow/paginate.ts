import type { Atom } from '../../atom.ts';
import { moveAtoms } from '../../moveAtoms.ts';
import type { Rect } from '../rect.ts';
import { nothing, type Block, type Stack } from './block.ts';

/** Columns are no narrower than this and stand this far apart; paper inches. */
const leastColumn = 6.6;
const gutter = 0.35;

/** The width of each column when as many as have room stand side by side. */
export const columnsIn = ({ width }: Rect): { readonly count: number; readonly width: number } => {
  const count = Math.max(1, Math.floor((width + gutter) / (leastColumn + gutter)));
  return { count, width: (width - gutter * (count - 1)) / count };
};

/** Where the next block goes. */
interface Cursor {
  page: number;
  column: number;
  y: number;
}

/**
 * Stacks down the columns of as many pages as they need. A stack's head never stands alone at the
 * foot of a column, and stands again at the top where its rows go on. A block higher than a whole
 * column is set at the top of one and runs out of it: nothing is lost, and tests forbid it.
 */
export const paginate = (stacks: readonly Stack[], room: Rect): Atom[][] => {
  const { count, width } = columnsIn(room);
  const pages: Atom[][] = [[]];
  const at: Cursor = { page: 0, column: 0, y: 0 };
  const fits = (height: number): boolean => at.y + height <= room.height + 1e-9;
  const advance = (): void => {
    at.y = 0;
    at.column += 1;
    if (at.column < count) return;
    at.column = 0;
    at.page += 1;
    pages.push([]);
  };
  const put = (block: Block): void => {
    const x = room.x + at.column * (width + gutter);
    pages[at.page]?.push(...moveAtoms(block.atoms, x, room.y + at.y));
    at.y += block.height;
  };
  for (const { head, again, rows, gap } of stacks) {
    const [first = nothing] = rows;
    const lead = at.y === 0 ? 0 : gap;
    if (at.y > 0 && !fits(lead + head.height + first.height)) advance();
    else at.y += lead;
    put(head);
    for (const row of rows) {
      if (!fits(row.height) && at.y > 0) {
        advance();
        put(again);
      }
      put(row);
    }
  }
  return pages;
};
