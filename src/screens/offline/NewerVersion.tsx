import { useState } from 'react';
import { useBench } from '../bench.ts';
import { isHalfDrawn } from '../isHalfDrawn.ts';
import { useStored } from '../useStored.ts';
import { keepProgram } from './newerVersion.ts';
import './newerVersion.css';
import { phrase } from '../../phrases/phrase.ts';

const versions = keepProgram();

/**
 * One quiet line once a newer version is there, with the key that takes it. It comes and can be pressed
 * only while nothing is half drawn; what is on the pad is kept first and is there again after.
 */
export const NewerVersion = () => {
  const { site, sender, jobs } = useBench();
  const newer = useStored(versions.newer, (state) => state);
  const hand = useStored(sender.hand, ({ piece, asked }) => piece !== null || asked !== null);
  const draft = useStored(site, ({ history }) => history.draft !== null);
  const busy = hand || draft;
  const [shown, setShown] = useState(false);
  if (newer.is === 'none') return null;
  // the pad does not change its size under a hand
  if (!shown && busy) return null;
  if (!shown) setShown(true);
  const take = async () => {
    await jobs.keeper.now();
    versions.take(() => !isHalfDrawn({ sender, site }));
  };
  return (
    <div className="newer" role="status">
      <span>{phrase`A newer version is ready.`}</span>
      <button type="button" disabled={busy} onClick={() => void take()}>
        {busy ? phrase`Finish the piece first` : phrase`Take it; the drawing stays`}
      </button>
    </div>
  );
};
