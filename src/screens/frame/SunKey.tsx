import { useRef } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import type { Session } from '../../store/session.ts';
import { useBench, useSession } from '../bench.ts';

/** One press for letters that are read in full sun, another for the light of before. */
export const SunKey = () => {
  const { session } = useBench();
  const theme = useSession((state) => state.theme);
  const before = useRef<Session['theme']>('day');
  const sun = theme === 'sun';
  const turn = () => {
    if (!sun) before.current = theme;
    session.setState({ theme: sun ? before.current : 'sun' });
  };
  return (
    <button
      type="button"
      className="sun"
      aria-label={phrase`Sun, for full light`}
      aria-pressed={sun}
      onClick={turn}
    >
      {phrase`Sun`}
    </button>
  );
};
