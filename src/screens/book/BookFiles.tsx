import { useRef, useState } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import type { Parsed } from '../../units/parsed.ts';
import { download } from '../files/download.ts';
import type { ImportLines } from './importLines.ts';
import { ImportPreview } from './ImportPreview.tsx';
import { readBookFile } from './readBookFile.ts';

const csv = 'text/csv';

/** What a file would do to the book, and the deed: null, or the one line why not. */
export interface BookFileRead {
  readonly lines: ImportLines;
  readonly take: (label: string) => string | null;
}

interface Props {
  /** The name of the file that the book is written to. */
  readonly name: string;
  readonly write: () => string;
  readonly read: (text: string) => Parsed<BookFileRead>;
}

/** What was read of a file and waits to be taken, or what is wrong with it. */
interface Opened {
  readonly name: string;
  readonly found: BookFileRead | null;
  /** One line for the hand, and whether it tells of a fault; empty where there is nothing to say. */
  readonly said: string;
  readonly tone: 'note' | 'fault';
}

/** A book as a file, out and in. What a file would do is shown before it is let. */
export const BookFiles = ({ name: file, write, read }: Props) => {
  const chooser = useRef<HTMLInputElement>(null);
  const [opened, setOpened] = useState<Opened | null>(null);
  const open = async (chosen: File) => {
    const { name } = chosen;
    const text = await readBookFile(chosen);
    const found = text.ok ? read(text.value) : text;
    setOpened({
      name,
      found: found.ok ? found.value : null,
      tone: 'fault',
      said: found.ok ? '' : phrase`${name}: ${found.reason}; the book is as it was`,
    });
  };
  const take = (name: string, found: BookFileRead) => {
    const fault = found.take(phrase`Import ${name}`);
    setOpened({
      name,
      found: null,
      tone: fault === null ? 'note' : 'fault',
      said: fault ?? phrase`${name}: taken into the book`,
    });
  };
  return (
    <section aria-label={phrase`The book as a file`}>
      <h3>{phrase`The book as a file`}</h3>
      <div className="choices">
        <button
          type="button"
          // a byte order mark tells spreadsheets that it is Unicode
          onClick={() => download({ name: file, type: csv, content: `\uFEFF${write()}` })}
        >{phrase`Export CSV`}</button>
        <button type="button" onClick={() => chooser.current?.click()}>{phrase`Import CSV`}</button>
      </div>
      <input
        ref={chooser}
        className="unseen"
        type="file"
        accept=".csv,text/csv"
        aria-label={phrase`CSV file to import`}
        tabIndex={-1}
        onChange={(event) => {
          const chosen = event.target.files?.[0];
          event.target.value = '';
          if (chosen !== undefined) void open(chosen);
        }}
      />
      {opened !== null && opened.said !== '' && (
        <p className={opened.tone} role="alert">
          {opened.said}
        </p>
      )}
      {opened?.found != null && (
        <ImportPreview
          name={opened.name}
          lines={opened.found.lines}
          onTake={() => opened.found !== null && take(opened.name, opened.found)}
          onLeave={() => setOpened(null)}
        />
      )}
    </section>
  );
};
