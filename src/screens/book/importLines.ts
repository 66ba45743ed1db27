import type { BookImport, TakenRow } from '../../importers/book/bookImport.ts';
import { phrase } from '../../phrases/phrase.ts';

/** How the entries of a book are told when a file is brought into it. */
export interface ImportWords<Id extends string, Entry> {
  readonly book: Readonly<Record<Id, Entry>>;
  readonly columns: readonly {
    readonly name: string;
    readonly write: (entry: Entry) => string;
  }[];
  readonly nameOf: (entry: Entry) => string;
  /** All of an entry that is new, in one line. */
  readonly lineOf: (entry: Entry) => string;
}

/** What a file would do to a book, line by line. */
export interface ImportLines {
  readonly added: readonly string[];
  readonly changed: readonly string[];
  readonly refused: readonly string[];
  readonly same: number;
  readonly leftOut: readonly string[];
}

const orNothing = (text: string): string => (text === '' ? phrase`nothing` : text);

/** What a row of a file would change in its entry of the book, column by column. */
const changeLine = <Id extends string, Entry>(
  { line, id, entry }: TakenRow<Id, Entry>,
  { book, columns, nameOf }: ImportWords<Id, Entry>,
): string => {
  const old = Object.hasOwn(book, id) ? book[id] : undefined;
  const changes = columns.flatMap(({ name, write }) => {
    const [from, to] = [old === undefined ? '' : write(old), write(entry)];
    return from === to
      ? []
      : [phrase`${name.toLowerCase()} ${orNothing(from)} to ${orNothing(to)}`];
  });
  return phrase`line ${line}: ${nameOf(old ?? entry)}: ${changes.join(', ')}`;
};

/** What a file would add to a book, change in it, and what of it cannot be taken. */
export const importLines = <Id extends string, Entry>(
  { added, changed, refused, same, leftOut }: BookImport<Id, Entry>,
  words: ImportWords<Id, Entry>,
): ImportLines => ({
  added: added.map(({ line, entry }) => phrase`line ${line}: ${words.lineOf(entry)}`),
  changed: changed.map((row) => changeLine(row, words)),
  refused: refused.map(({ line, reason }) => phrase`line ${line}: ${reason}`),
  same,
  leftOut,
});
