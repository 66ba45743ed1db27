import { phrase } from '../../phrases/phrase.ts';
import { useBench } from '../bench.ts';
import { OpenFileKey } from '../files/OpenFileKey.tsx';
import { openSample } from '../files/openSample.ts';
import { samples } from '../files/samples.ts';
import { beginTour } from '../help/tour/beginTour.ts';
import { CallsKey } from './calls/CallsKey.tsx';

const nothing = (): void => undefined;

/** What an empty pad says: what to do first. It makes way for any tool, and for the first mark. */
export const FirstSteps = () => {
  const bench = useBench();
  const { session } = bench;
  const [sample] = samples;
  return (
    <section className="first" aria-labelledby="first-steps">
      <div>
        <h2 id="first-steps">{phrase`Start with what stands still`}</h2>
        <p>{phrase`Draw the house wall or the lot first, then run the fence from it: tap a corner, type the length off the tape, tap the way it goes. Gates come last.`}</p>
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
        </div>
        <div className="choices rest">
          <button type="button" onClick={() => beginTour(bench)}>
            {phrase`Take the tour, two minutes`}
          </button>
          {sample !== undefined && (
            <button type="button" onClick={() => void openSample(bench, sample)}>
              {phrase`Look at a sample yard`}
            </button>
          )}
          <OpenFileKey onOpened={nothing} file={phrase`Site file to begin with`} />
          <CallsKey />
        </div>
      </div>
    </section>
  );
};
