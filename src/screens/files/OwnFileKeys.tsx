import { useEffect, useState } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import { useBench } from '../bench.ts';
import { useStored } from '../useStored.ts';
import { canKeepFiles, type FileHandle } from './filePickers.ts';
import {
  openOwn,
  ownFileOf,
  saveToChosen,
  saveToOwn,
  withFiles,
  writeOver,
  type OwnFile,
  type Saved,
} from './ownFile.ts';
import { canShareFiles, shareFile } from './shareFile.ts';

interface AskProps {
  readonly name: string;
  readonly onKeepBoth: () => void;
  readonly onOpen: () => void;
  readonly onOver: () => void;
  readonly onLeave: () => void;
}

/** What is to become of a file that somebody else has changed. */
const AskOver = ({ name, onKeepBoth, onOpen, onOver, onLeave }: AskProps) => (
  <div role="alert" className="stack">
    <p>{phrase`What stands in ${name} is not what this job last read from it or wrote there. Nothing has been written.`}</p>
    <div className="choices">
      <button type="button" onClick={onKeepBoth}>{phrase`Keep both: save to another file`}</button>
      <button type="button" onClick={onOpen}>{phrase`Open that one`}</button>
      <button type="button" onClick={onOver}>{phrase`Write over it`}</button>
      <button type="button" onClick={onLeave}>{phrase`Leave it`}</button>
    </div>
  </div>
);

/** Saving to a file that stays the job's, and handing it over, where the browser has it. */
export const OwnFileKeys = ({ onOpened }: { readonly onOpened: () => void }) => {
  const bench = useBench();
  const job = useStored(bench.site, (state) => state.pad.job);
  const [own, setOwn] = useState<OwnFile | null>(null);
  const [other, setOther] = useState<FileHandle | null>(null);
  useEffect(() => {
    let here = true;
    void ownFileOf(bench, job).then((file) => here && setOwn(file));
    return () => {
      here = false;
    };
  }, [bench, job]);
  const took = (saved: Saved | null) => {
    if (saved === null) return;
    setOther(saved.is === 'differs' ? saved.handle : null);
    if (saved.is === 'saved') setOwn(saved.file);
  };
  const save = (way: typeof saveToOwn) => void withFiles(bench, () => way(bench)).then(took);
  const over = (handle: FileHandle) =>
    void withFiles(bench, () => writeOver(bench, handle)).then((file) => {
      if (file !== null) took({ is: 'saved', file });
    });
  return (
    <>
      <div className="choices">
        {canKeepFiles() && (
          <button type="button" onClick={() => save(saveToOwn)}>
            {own === null
              ? phrase`Save to a file that stays its own`
              : phrase`Save to ${own.handle.name}`}
          </button>
        )}
        {canKeepFiles() && own !== null && (
          <button
            type="button"
            onClick={() => save(saveToChosen)}
          >{phrase`Save to another file`}</button>
        )}
        {canShareFiles() && (
          <button
            type="button"
            onClick={() => void shareFile(bench)}
          >{phrase`Hand over file`}</button>
        )}
      </div>
      {other !== null && (
        <AskOver
          name={other.name}
          onKeepBoth={() => save(saveToChosen)}
          onOpen={() => void withFiles(bench, () => openOwn(bench, other)).then(onOpened)}
          onOver={() => over(other)}
          onLeave={() => setOther(null)}
        />
      )}
    </>
  );
};
