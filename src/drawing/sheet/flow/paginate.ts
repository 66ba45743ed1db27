import type { Atom } from '../../atom.ts';
import { moveAtoms } from '../../moveAtoms.ts';
import type { Rect } from '../rect.ts';
import type { Block, Stack } from './block.ts';

/** Columns are no narrower than this and stand this far apart; paper inches. */
const leastColumn = 6.6;
const gutter = 0.35;
const beforePart = 0.45;
/** A head keeps so many of its rows with it. */
const fewestRows = 3;

/** The width of each column when as many as have room stand side by side. */
export const columnsIn = ({ width }: Rect): { readonly count: number; readonly width: number } => {
  const count = Math.max(1, Math.floor((width + gutter) / (leastColumn + gutter)));
  return { count, width: (width - gutter * (count - 1)) / count };
};

/** A filled page, named for the part of the set that is at its top. */
export interface FilledPage {
  readonly part: string;
  readonly atoms: readonly Atom[];
}

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
export const paginate = (stacks: readonly Stack[], room: Rect): readonly FilledPage[] => {
  const { count, width } = columnsIn(room);
  const pages: { part: string; atoms: Atom[] }[] = [];
  const at: Cursor = { page: 0, column: 0, y: 0 };
  const fits = (height: number): boolean => at.y + height <= room.height + 1e-9;
  const advance = (): void => {
    at.y = 0;
    at.column += 1;
    if (at.column < count) return;
    at.column = 0;
    at.page += 1;
  };
  const put = (block: Block, part: string): void => {
    if (block.height === 0) return;
    const x = room.x + at.column * (width + gutter);
    const page = (pages[at.page] ??= { part, atoms: [] });
    page.atoms.push(...moveAtoms(block.atoms, x, room.y + at.y));
    at.y += block.height;
  };
  let part = '';
  for (const { head, again, rows, gap, part: own } of stacks) {
    const begins = own !== undefined && own !== part;
    part = own ?? part;
    const least = rows.slice(0, fewestRows).reduce((so, row) => so + row.height, head.height);
    const lead = at.y === 0 ? 0 : Math.max(gap, begins ? beforePart : 0);
    if (at.y > 0 && !fits(lead + least)) advance();
    else at.y += lead;
    put(head, part);
    for (const row of rows) {
      if (!fits(row.height) && at.y > 0) {
        advance();
        put(again, part);
      }
      put(row, part);
    }
  }
  return pages;
};
