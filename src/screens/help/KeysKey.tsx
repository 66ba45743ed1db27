import { phrase } from '../../phrases/phrase.ts';
import { useBench } from '../bench.ts';

/** Opens the page of keys and gestures from the card. */
export const KeysKey = () => {
  const { session } = useBench();
  return (
    <div className="choices">
      <button
        type="button"
        aria-haspopup="dialog"
        onClick={() => session.setState({ help: 'open' })}
      >
        {phrase`Keys and gestures`}
      </button>
    </div>
  );
};
