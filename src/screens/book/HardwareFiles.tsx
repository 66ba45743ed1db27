import { bookColumns } from '../../exporters/csv/bookColumns.ts';
import { bookToCsv } from '../../exporters/csv/bookToCsv.ts';
import { bookFromCsv } from '../../importers/book/bookFromCsv.ts';
import { read, type Parsed } from '../../units/parsed.ts';
import { useBench, useSite } from '../bench.ts';
import { BookFiles, type BookFileRead } from './BookFiles.tsx';
import { changeBook } from './changeBook.ts';
import { freshId } from './freshId.ts';
import { importLines } from './importLines.ts';
import { partLine } from './partWords.ts';
import { takenRows } from './takenRows.ts';

/** The hardware book as a file, out and in. */
export const HardwareFiles = () => {
  const { book } = useBench();
  const { lengths } = useSite();
  const readFile = (text: string): Parsed<BookFileRead> => {
    const { entries } = book.getState();
    const found = bookFromCsv(text, { book: entries, freshId: () => freshId('hardware') });
    if (!found.ok) return found;
    const words = {
      book: entries,
      columns: bookColumns,
      nameOf: ({ label }: { readonly label: string }) => label,
      lineOf: (part: Parameters<typeof partLine>[0]) => `${part.label}: ${partLine(part, lengths)}`,
    };
    return read({
      lines: importLines(found.value, words),
      take: (label) => changeBook(book, label, takenRows(found.value)),
    });
  };
  return (
    <BookFiles
      name="hardware-book.csv"
      write={() => bookToCsv(book.getState().entries)}
      read={readFile}
    />
  );
};
