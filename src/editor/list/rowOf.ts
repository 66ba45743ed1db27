import { isSame } from '../hit.ts';
import type { Selection } from '../../store/selection.ts';
import { withAllRows, type ListGroup, type ListRow } from './listRow.ts';

/**
 * The row of what is selected: its own, before that of a flag or of a post that only stands for it. Null
 * where nothing is, and for what has no row.
 */
export const rowOf = (groups: readonly ListGroup[], selection: Selection): ListRow | null => {
  if (selection === null) return null;
  const all = groups.flatMap(({ key, rows }) =>
    key === 'flags' ? [] : rows.flatMap((row) => withAllRows(row)),
  );
  return all.find((row) => isSame(row.selection, selection)) ?? null;
};
