import { useState } from 'react';
import { useBench } from '../bench.ts';
import { useStored } from '../useStored.ts';
import { keepProgram } from './newerVersion.ts';
import './newerVersion.css';

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
  const isBusy = () => {
    const { piece, asked } = sender.hand.getState();
    return piece !== null || asked !== null || site.getState().history.draft !== null;
  };
  const take = async () => {
    await jobs.keeper.now();
    versions.take(() => !isBusy());
  };
  return (
    <div className="newer" role="status">
      <span>A newer version is ready.</span>
      <button type="button" disabled={busy} onClick={() => void take()}>
        {busy ? 'Finish the piece first' : 'Take it; the drawing stays'}
      </button>
    </div>
  );
};
