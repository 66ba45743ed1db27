import type { Atom } from '../../atom.ts';
import { moveAtoms } from '../../moveAtoms.ts';
import type { Rect } from '../rect.ts';
import { nothing, type Block, type Stack } from './block.ts';
import { stackBlocks } from './stackBlocks.ts';

/** Columns are no narrower than this and stand this far apart; paper inches. */
const leastColumn = 6.6;
const gutter = 0.35;
const beforePart = 0.45;
/** A head keeps so many of its rows with it, of high rows no more than fill so many paper inches. */
const fewestRows = 3;
const keptHeight = 1.5;

/** How wide and how high a column is, paper inches. */
export type ColumnSize = Pick<Rect, 'width' | 'height'>;

/** The size of each column when as many as have room stand side by side. */
export const columnsIn = ({ width, height }: Rect): ColumnSize & { readonly count: number } => {
  const count = Math.max(1, Math.floor((width + gutter) / (leastColumn + gutter)));
  return { count, width: (width - gutter * (count - 1)) / count, height };
};

/** A block on a page: its upper left corner, paper inches. */
interface Placed {
  readonly block: Block;
  readonly x: number;
  readonly y: number;
}

/** Where blocks stand on a page, the parts of the set that they are of, in order, and the anchors that begin there. */
export interface PagePlaces {
  readonly parts: readonly string[];
  readonly anchors: readonly string[];
  readonly placed: readonly Placed[];
}

/** A filled page, the parts of the set that stand on it, in order, and the anchors of stacks that begin there. */
export interface FilledPage extends Omit<PagePlaces, 'placed'> {
  readonly atoms: readonly Atom[];
}

/** Where the next block goes. */
interface Cursor {
  page: number;
  column: number;
  y: number;
}

const heightOf = (blocks: readonly Block[]): number =>
  blocks.reduce((so, { height }) => so + height, 0);

/** Height of a head with the rows that it keeps; fewer rows where a column is not so high. */
const least = ({ head, rows }: Stack, most: number): number => {
  for (let count = Math.min(fewestRows, rows.length); count > 1; count -= 1) {
    const kept = heightOf(rows.slice(0, count));
    if (kept <= keptHeight && head.height + kept <= most) return head.height + kept;
  }
  return head.height + heightOf(rows.slice(0, 1));
};

/**
 * Places of stacks down the columns of as many pages as they need. A stack's head never stands alone at the
 * foot of a column, and stands again at the top where its rows go on, with what they are resumed under; nor does its last row go on
 * alone. A block higher than a whole column is set at the top of one and runs out of it: nothing
 * is lost, and tests forbid it.
 */
export const pagePlaces = (stacks: readonly Stack[], room: Rect): readonly PagePlaces[] => {
  const { count, width } = columnsIn(room);
  const pages: { parts: string[]; anchors: string[]; placed: Placed[] }[] = [];
  const pageAt = (page: number) => (pages[page] ??= { parts: [], anchors: [], placed: [] });
  const at: Cursor = { page: 0, column: 0, y: 0 };
  const fits = (height: number): boolean => at.y + height <= room.height + 1e-9;
  const goesOnTogether = (pair: number, over: readonly Block[]): boolean =>
    !fits(pair) && heightOf(over) + pair <= room.height;
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
    const page = pageAt(at.page);
    if (!page.parts.includes(part)) page.parts.push(part);
    page.placed.push({ block, x, y: room.y + at.y });
    at.y += block.height;
  };
  let part = '';
  for (const stack of stacks) {
    const { head, again, rows, gap, anchor, part: own } = stack;
    const begins = own !== undefined && own !== part;
    part = own ?? part;
    const lead = at.y === 0 ? 0 : Math.max(gap, begins ? beforePart : 0);
    if (at.y > 0 && !fits(lead + least(stack, room.height))) advance();
    else at.y += lead;
    if (anchor !== undefined) pageAt(at.page).anchors.push(anchor);
    put(head, part);
    let here = 0;
    rows.forEach((row, n) => {
      const over = [again, row.resumed ?? nothing];
      const leavesOne =
        n === rows.length - 2 && here > 0 && goesOnTogether(heightOf(rows.slice(n)), over);
      if (leavesOne || (!fits(row.height) && at.y > 0)) {
        advance();
        put(stackBlocks(over), part);
        here = 0;
      }
      put(row, part);
      here += 1;
    });
  }
  return pages;
};

/** The pages of `pagePlaces` with what stands on them. */
export const paginate = (stacks: readonly Stack[], room: Rect): readonly FilledPage[] =>
  pagePlaces(stacks, room).map(({ placed, ...page }) => ({
    ...page,
    atoms: placed.flatMap(({ block, x, y }) => moveAtoms(block.atoms, x, y)),
  }));
