import { phrase, phraseOf } from '../../../phrases/phrase.ts';
import { useBench, useSite } from '../../bench.ts';
import { centreOn } from '../../centreOn.ts';
import { dropMark } from './dropMark.ts';
import type { Walk } from './useWalk.ts';
import './walk.css';
import { walkText } from './walkText.ts';

interface Props {
  readonly walk: Walk;
}

/** What can be done where the walk is. */
const HereKeys = ({ walk: { state, place, send } }: Props) => {
  const bench = useBench();
  if (state.is !== 'here' || place === null || place.away !== null) return null;
  const gathering = state.gathered !== null;
  const drop = () => {
    dropMark(bench, place);
    send({ do: 'ungather' });
  };
  return (
    <>
      <button type="button" className="chief" onClick={drop}>
        {phrase`Drop a mark here`}
      </button>
      <button
        type="button"
        aria-pressed={gathering}
        title={phrase`Stand still meanwhile`}
        onClick={() => send({ do: gathering ? 'ungather' : 'gather' })}
      >
        {phrase`Average`}
      </button>
      <button type="button" onClick={() => centreOn(bench, place.at)}>
        {phrase`Centre`}
      </button>
    </>
  );
};

/** The walk beside the pad, on a phone over its top: what it says, and its keys. */
export const WalkPanel = ({ walk }: Props) => {
  const { lengths, origin } = useSite();
  const { state, place, start, send } = walk;
  // how many readings are averaged is not read out one by one
  const quiet = state.is === 'here' && state.told === null;
  return (
    <section className="walk" aria-label={phrase`Walk`}>
      <div className="walk-head">
        <p className={state.is === 'off' ? 'fault' : ''} aria-live={quiet ? 'off' : 'polite'}>
          {walkText(state, place, lengths)}
        </p>
        <button type="button" onClick={() => send({ do: 'stop' })}>
          {phraseOf('walk')`Stop`}
        </button>
      </div>
      {state.is === 'here' && place?.away === null && origin === null && (
        <p className="note">
          {phrase`The first mark says where on earth this drawing is, north up.`}
        </p>
      )}
      <div className="choices">
        <HereKeys walk={walk} />
        {state.is === 'off' && (
          <button type="button" className="chief" onClick={start}>
            {phrase`Try again`}
          </button>
        )}
      </div>
    </section>
  );
};
