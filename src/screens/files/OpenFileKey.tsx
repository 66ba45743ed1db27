import { useRef } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import { useBench } from '../bench.ts';
import { canKeepFiles, chooseToOpen } from './filePickers.ts';
import { openOwn, withFiles } from './ownFile.ts';
import { takeFile } from './takeFile.ts';

interface Props {
  readonly onOpened: () => void;
  /** What the file is called where there is another such key. */
  readonly file?: string;
}

/** Opens a site file, or the drawing of a crew sheet; by the browser's own chooser where a job can keep its file. */
export const OpenFileKey = ({ onOpened, file = phrase`Site file to open` }: Props) => {
  const bench = useBench();
  const chooser = useRef<HTMLInputElement>(null);
  const open = () => {
    if (!canKeepFiles()) return chooser.current?.click();
    return void withFiles(bench, async () => {
      const handle = await chooseToOpen();
      if (handle === null) return;
      await openOwn(bench, handle);
      onOpened();
    });
  };
  return (
    <>
      <button type="button" onClick={open}>
        {phrase`Open file`}
      </button>
      <input
        ref={chooser}
        className="unseen"
        type="file"
        accept=".json,application/json,.pdf,application/pdf"
        aria-label={file}
        tabIndex={-1}
        onChange={(event) => {
          const chosen = event.target.files?.[0];
          event.target.value = '';
          if (chosen !== undefined) void takeFile(bench, chosen).then(onOpened);
        }}
      />
    </>
  );
};
