import { useRef, useState } from 'react';
import { bookFromCsv, type BookImport } from '../../importers/book/bookFromCsv.ts';
import { bookToCsv } from '../../exporters/csv/bookToCsv.ts';
import { useBench, useBook } from '../bench.ts';
import { download } from '../files/download.ts';
import { freshId } from './freshId.ts';
import { ImportPreview } from './ImportPreview.tsx';
import { readBookFile } from './readBookFile.ts';
import { useBookChange } from './useBookChange.ts';

const csv = 'text/csv';

/** What was read of a file and waits to be taken, or what is wrong with it. */
interface Opened {
  readonly name: string;
  readonly found: BookImport | null;
  /** One line for the hand, and whether it tells of a fault; empty where there is nothing to say. */
  readonly said: string;
  readonly tone: 'note' | 'fault';
}

/** The book as a file, out and in. What a file would do is shown before it is let. */
export const BookFiles = () => {
  const { book: store } = useBench();
  const book = useBook();
  const change = useBookChange();
  const chooser = useRef<HTMLInputElement>(null);
  const [opened, setOpened] = useState<Opened | null>(null);
  const open = async (file: File) => {
    const { name } = file;
    const text = await readBookFile(file);
    const found = text.ok
      ? bookFromCsv(text.value, { book: store.getState().entries, freshId })
      : text;
    setOpened({
      name,
      found: found.ok ? found.value : null,
      tone: 'fault',
      said: found.ok ? '' : `${name}: ${found.reason}; the book is as it was`,
    });
  };
  const take = ({ name, found }: Opened) => {
    const rows = found === null ? [] : [...found.added, ...found.changed];
    const parts = Object.fromEntries(rows.map(({ id, hardware }) => [id, hardware]));
    const fault = change(`Import ${name}`, parts);
    setOpened({
      name,
      found: null,
      tone: fault === null ? 'note' : 'fault',
      said: fault ?? `${name}: taken into the book`,
    });
  };
  return (
    <section aria-label="The book as a file">
      <h3>The book as a file</h3>
      <div className="choices">
        <button
          type="button"
          // a byte order mark tells spreadsheets that it is Unicode
          onClick={() =>
            download({ name: 'hardware-book.csv', type: csv, content: `\uFEFF${bookToCsv(book)}` })
          }
        >
          Export CSV
        </button>
        <button type="button" onClick={() => chooser.current?.click()}>
          Import CSV
        </button>
      </div>
      <input
        ref={chooser}
        className="unseen"
        type="file"
        accept=".csv,text/csv"
        aria-label="CSV file to import"
        tabIndex={-1}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file !== undefined) void open(file);
        }}
      />
      {opened !== null && opened.said !== '' && (
        <p className={opened.tone} role="alert">
          {opened.said}
        </p>
      )}
      {opened !== null && opened.found !== null && (
        <ImportPreview
          name={opened.name}
          found={opened.found}
          book={book}
          onTake={() => take(opened)}
          onLeave={() => setOpened(null)}
        />
      )}
    </section>
  );
};
