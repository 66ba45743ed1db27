import { phrase } from '../../phrases/phrase.ts';
import { useBench } from '../bench.ts';
import { saveFile } from '../files/saveFile.ts';
import { useStored } from '../useStored.ts';

/** Where jobs are kept and what can become of them there, with the key that saves the one on the pad. */
export const KeepNote = () => {
  const bench = useBench();
  const promise = useStored(bench.jobs.promise, (state) => state);
  return (
    <>
      <p className="note">
        {phrase`Kept on this device, each with its whole history. Nobody else has them: save a file of what must not be lost.`}
        {promise === 'not promised' &&
          ` ${phrase`This browser may let all of it go when the device runs low on room, or when the program is not used for weeks.`}`}
      </p>
      {promise === 'not promised' && (
        <div className="choices">
          <button
            type="button"
            onClick={() => saveFile(bench)}
          >{phrase`Save a file of the job on the pad`}</button>
        </div>
      )}
    </>
  );
};
