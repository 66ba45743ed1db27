import { phrase } from '../../phrases/phrase.ts';
import { useBench } from '../bench.ts';
import { openSample } from '../files/openSample.ts';
import { samples } from '../files/samples.ts';
import { CallsKey } from './calls/CallsKey.tsx';

/** What an empty pad says: what to do first. */
export const FirstSteps = () => {
  const bench = useBench();
  const { session } = bench;
  const [sample] = samples;
  return (
    <div className="first">
      <div>
        <h2>{phrase`Start with what stands still`}</h2>
        <p>
          {phrase`Draw the house wall or the lot first, then run the fence from it: tap a corner, type the length off the tape, tap the way it goes. Gates come last.`}
        </p>
        <div className="choices">
          <button
            type="button"
            className="chief"
            onClick={() => session.setState({ tool: 'building' })}
          >
            {phrase`Draw the house`}
          </button>
          <button type="button" onClick={() => session.setState({ tool: 'fence' })}>
            {phrase`Draw a fence`}
          </button>
          <CallsKey />
          {sample !== undefined && (
            <button type="button" onClick={() => void openSample(bench, sample)}>
              {phrase`Look at a sample yard`}
            </button>
          )}
        </div>
      </div>
    </div>
  );
};
