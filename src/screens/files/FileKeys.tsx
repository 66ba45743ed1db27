import { useRef } from 'react';
import { useBench } from '../bench.ts';
import { openSample } from './openSample.ts';
import { saveFile } from './saveFile.ts';
import { samples } from './samples.ts';
import { startNew } from './startNew.ts';
import { takeFile } from './takeFile.ts';

interface Props {
  /** Called when another drawing was put on the pad, or one waits to be brought in. */
  readonly onOpened: () => void;
}

/** Open, save, start anew, bring in, and the yards that come with the program. */
export const FileKeys = ({ onOpened }: Props) => {
  const bench = useBench();
  const chooser = useRef<HTMLInputElement>(null);
  const bringer = useRef<HTMLInputElement>(null);
  return (
    <>
      <div className="choices">
        <button type="button" onClick={() => chooser.current?.click()}>
          Open file
        </button>
        <button type="button" onClick={() => void saveFile(bench)}>
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
        <button type="button" onClick={() => bringer.current?.click()}>
          Bring in GeoJSON, DXF or CSV
        </button>
      </div>
      <input
        ref={chooser}
        className="unseen"
        type="file"
        accept=".json,application/json,.pdf,application/pdf"
        aria-label="Site file to open"
        tabIndex={-1}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file !== undefined) void takeFile(bench, file).then(onOpened);
        }}
      />
      <input
        ref={bringer}
        className="unseen"
        type="file"
        accept=".geojson,.json,.dxf,.csv,.tsv,.txt"
        aria-label="File to bring in"
        tabIndex={-1}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file === undefined) return;
          onOpened();
          bench.bring.setState(file, true);
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
      <p className="note">
        What you open or begin is a job of its own, and can be undone like any other step.
      </p>
    </>
  );
};
