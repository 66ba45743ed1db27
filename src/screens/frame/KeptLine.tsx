import { phrase } from '../../phrases/phrase.ts';
import { useBench } from '../bench.ts';
import { saveFile } from '../files/saveFile.ts';
import { useStored } from '../useStored.ts';

/** What is not kept on the device and how to save it: it stands until it has passed or is put away. */
export const KeptLine = () => {
  const bench = useBench();
  const { keeper } = bench.jobs;
  const trouble = useStored(keeper.state, (state) => state.trouble);
  if (trouble === null) return null;
  return (
    <div className="kept-line" role="alert">
      <span>{trouble.line}</span>
      <button type="button" onClick={() => void saveFile(bench)}>{phrase`Save file`}</button>
      <button type="button" onClick={() => void keeper.now()}>{phrase`Try again`}</button>
      <button type="button" onClick={keeper.hush}>{phrase`Put away`}</button>
    </div>
  );
};
