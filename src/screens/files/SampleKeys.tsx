import { phrase } from '../../phrases/phrase.ts';
import { useBench } from '../bench.ts';
import { openSample } from './openSample.ts';
import { samples } from './samples.ts';

/** The yards that come with the program. */
export const SampleKeys = ({ onOpened }: { readonly onOpened: () => void }) => {
  const bench = useBench();
  return (
    <>
      <h3>{phrase`Sample yards`}</h3>
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
    </>
  );
};
