import { useRef, useState } from 'react';
import { shotsFromCsv, type ShotImport } from '../../../importers/csv/shotsFromCsv.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { addShots } from '../../../site/edits/addShots.ts';
import { attempt } from '../../attempt.ts';
import { useBench, useSite } from '../../bench.ts';
import { readShotFile } from './readShotFile.ts';
import { ShotPreview } from './ShotPreview.tsx';

/** What was read of a file and waits to be taken, or one line for the hand. */
type Opened =
  | { readonly name: string; readonly found: ShotImport }
  | { readonly said: string; readonly tone: 'note' | 'fault' };

/** Grade shots out of a file; what is in it is shown before it is taken. */
export const BringShots = () => {
  const bench = useBench();
  const { shots, lengths } = useSite();
  const chooser = useRef<HTMLInputElement>(null);
  const [opened, setOpened] = useState<Opened | null>(null);
  const open = async (file: File) => {
    const { name } = file;
    const text = await readShotFile(file);
    const found = text.ok
      ? shotsFromCsv(text.value, { shots: Object.values(shots), system: lengths.system })
      : text;
    setOpened(
      found.ok
        ? { name, found: found.value }
        : { tone: 'fault', said: phrase`${name}: ${found.reason}; the drawing is as it was` },
    );
  };
  const take = (name: string, { taken }: ShotImport) => {
    const added = taken.map(({ shot }) => shot);
    const fault = attempt(bench, {
      label: phrase`Bring in ${name}`,
      on: (was) => addShots(was, added),
    });
    const said = phrase`${name}: ${added.length} grade shots brought in`;
    setOpened({ tone: fault === null ? 'note' : 'fault', said: fault ?? said });
  };
  return (
    <>
      <button type="button" onClick={() => chooser.current?.click()}>
        {phrase`Bring in shots (CSV)`}
      </button>
      <input
        ref={chooser}
        className="unseen"
        type="file"
        accept=".csv,.txt,text/csv,text/plain"
        aria-label={phrase`CSV file of grade shots`}
        tabIndex={-1}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file !== undefined) void open(file);
        }}
      />
      {opened !== null && 'said' in opened && (
        <p className={opened.tone} role="alert">
          {opened.said}
        </p>
      )}
      {opened !== null && 'found' in opened && (
        <ShotPreview
          {...opened}
          onTake={() => take(opened.name, opened.found)}
          onLeave={() => setOpened(null)}
        />
      )}
    </>
  );
};
