import { useRef } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import { useBench } from '../bench.ts';
import { OpenFileKey } from './OpenFileKey.tsx';
import { OwnFileKeys } from './OwnFileKeys.tsx';
import { saveFile } from './saveFile.ts';
import { SampleKeys } from './SampleKeys.tsx';
import { startNew } from './startNew.ts';

interface Props {
  /** Called when another drawing was put on the pad, or one waits to be brought in. */
  readonly onOpened: () => void;
}

/** Open, save, start anew, bring in, and the yards that come with the program. */
export const FileKeys = ({ onOpened }: Props) => {
  const bench = useBench();
  const bringer = useRef<HTMLInputElement>(null);
  return (
    <>
      <div className="choices">
        <OpenFileKey onOpened={onOpened} />
        <button type="button" onClick={() => void saveFile(bench)}>{phrase`Save file`}</button>
        <button
          type="button"
          onClick={() => {
            startNew(bench);
            onOpened();
          }}
        >{phrase`New yard`}</button>
        <button
          type="button"
          onClick={() => bringer.current?.click()}
        >{phrase`Bring in GeoJSON, DXF or CSV`}</button>
      </div>
      <OwnFileKeys onOpened={onOpened} />
      <input
        ref={bringer}
        className="unseen"
        type="file"
        accept=".geojson,.json,.dxf,.csv,.tsv,.txt"
        aria-label={phrase`File to bring in`}
        tabIndex={-1}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file === undefined) return;
          onOpened();
          bench.bring.setState(file, true);
        }}
      />
      <SampleKeys onOpened={onOpened} />
      <p className="note">{phrase`What you open or begin is a job of its own, and can be undone like any other step.`}</p>
    </>
  );
};
