import type { LevelId } from '../../site/ids.ts';
import type { LevelNote } from '../../site/levels.ts';
import { inOrder } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';
import type { Parsed } from '../../units/parsed.ts';
import { levelBook, type LevelBook } from './levelBook.ts';
import type { LevelRow } from './levelRow.ts';

/** The level notes of a site in their order, and what follows from them. */
export interface SiteLevels {
  readonly rows: readonly (LevelRow & { readonly id: LevelId })[];
  /** One point for each row; unread with one line where a row is not as it must be. */
  readonly book: Parsed<LevelBook>;
}

/** Works out the level notes of a site. A site without any has a book that says so in one line. */
export const levelsOf = ({ levels }: Pick<Site, 'levels'>): SiteLevels => {
  const rows = inOrder<LevelId, LevelNote>(levels.notes);
  return { rows, book: levelBook(rows, levels.allowable) };
};
