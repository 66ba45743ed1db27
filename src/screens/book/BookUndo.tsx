import { phrase } from '../../phrases/phrase.ts';
import type { BookStore } from '../../store/bookStore.ts';
import { useStored } from '../useStored.ts';

/** Undo and redo of a book, which no document is part of. */
export const BookUndo = <Id extends string, Entry>({
  book,
}: {
  readonly book: BookStore<Id, Entry>;
}) => {
  const past = useStored(book, (state) => state.past);
  const future = useStored(book, (state) => state.future);
  const { undo, redo } = book.getState();
  const [back, again] = [past.at(-1)?.label, future[0]?.label];
  return (
    <div className="book-undo" role="group" aria-label={phrase`Undo in the book`}>
      <button type="button" disabled={back === undefined} onClick={undo}>
        {phrase`Undo`} {back !== undefined && <small>{back}</small>}
      </button>
      <button type="button" disabled={again === undefined} onClick={redo}>
        {phrase`Redo`} {again !== undefined && <small>{again}</small>}
      </button>
    </div>
  );
};
