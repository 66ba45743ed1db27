import { useRef } from 'react';
import { useBench } from '../bench.ts';
import { openFile } from './openFile.ts';
import { openSample } from './openSample.ts';
import { saveFile } from './saveFile.ts';
import { samples } from './samples.ts';
import { startNew } from './startNew.ts';

interface Props {
  /** Called when another drawing was put on the pad. */
  readonly onOpened: () => void;
}

/** Open, save, start anew, and the yards that come with the program. */
export const FileKeys = ({ onOpened }: Props) => {
  const bench = useBench();
  const chooser = useRef<HTMLInputElement>(null);
  return (
    <>
      <div className="choices">
        <button type="button" onClick={() => chooser.current?.click()}>
          Open file
        </button>
        <button type="button" onClick={() => saveFile(bench)}>
          Save file
        </button>
        <button
          type="button"
          onClick={() => {
            startNew(bench);
            onOpened();
          }}
        >
          New yard
        </button>
      </div>
      <input
        ref={chooser}
        className="unseen"
        type="file"
        accept=".json,application/json"
        aria-label="Site file to open"
        tabIndex={-1}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file !== undefined) void openFile(bench, file).then(onOpened);
        }}
      />
      <h3>Sample yards</h3>
      <div className="choices">
        {samples.map((sample) => (
          <button
            key={sample.id}
            type="button"
            onClick={() => void openSample(bench, sample).then(onOpened)}
          >
            {sample.label}
          </button>
        ))}
      </div>
      <p className="note">Opening another drawing can be undone like any other step.</p>
    </>
  );
};
