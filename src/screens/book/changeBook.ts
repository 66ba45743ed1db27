import type { BookChange, BookStore } from '../../store/bookStore.ts';

/** Changes a book under the label that its undo shows: null, or the one line why not. */
export const changeBook = <Id extends string, Entry>(
  book: BookStore<Id, Entry>,
  label: string,
  change: BookChange<Id, Entry>,
): string | null => {
  try {
    book.getState().change(label, change);
    return null;
  } catch (error) {
    if (error instanceof RangeError) return error.message;
    throw error;
  }
};
