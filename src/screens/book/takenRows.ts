import type { BookImport } from '../../importers/book/bookImport.ts';
import type { BookEntries } from '../../store/bookStore.ts';

/** What a file adds to a book and changes in it, by the ids of the entries. */
export const takenRows = <Id extends string, Entry>({
  added,
  changed,
}: BookImport<Id, Entry>): BookEntries<Id, Entry> =>
  Object.fromEntries([...added, ...changed].map(({ id, entry }) => [id, entry])) as BookEntries<
    Id,
    Entry
  >;
