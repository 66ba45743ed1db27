import { useRef } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import { useBench } from '../bench.ts';
import { canKeepFiles, chooseToOpen } from './filePickers.ts';
import { openOwn, withFiles } from './ownFile.ts';
import { takeFile } from './takeFile.ts';

/** Opens a site file, or the drawing of a crew sheet; by the browser's own chooser where a job can keep its file. */
export const OpenFileKey = ({ onOpened }: { readonly onOpened: () => void }) => {
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
        aria-label={phrase`Site file to open`}
        tabIndex={-1}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file !== undefined) void takeFile(bench, file).then(onOpened);
        }}
      />
    </>
  );
};
