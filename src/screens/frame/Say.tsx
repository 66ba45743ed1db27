import { useEffect } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import { useBench, useSession } from '../bench.ts';
import { useHeard } from './useHeard.ts';

/** A line stays for this long, and longer for each letter; milliseconds. */
const [atLeast, eachLetter] = [5000, 60];

/**
 * The one line that the program has to say, read out as well: it goes by itself or when told. What has
 * changed in the yard can be seen there; it is only read out.
 */
export const Say = () => {
  const { session } = useBench();
  const say = useSession((state) => state.say);
  const told = useHeard();
  useEffect(() => {
    if (say === '') return undefined;
    const hush = () => session.setState((state) => (state.say === say ? { say: '' } : state));
    const timer = setTimeout(hush, atLeast + eachLetter * say.length);
    return () => clearTimeout(timer);
  }, [say, session]);
  return (
    <div className="say" role="status">
      {say !== '' && (
        <p>
          <span>{say}</span>
          <button type="button" onClick={() => session.setState({ say: '' })}>{phrase`OK`}</button>
        </p>
      )}
      <p className="unseen">{told}</p>
    </div>
  );
};
