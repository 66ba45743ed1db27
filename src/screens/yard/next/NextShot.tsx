import { phrase } from '../../../phrases/phrase.ts';
import { Shots } from './Shots.tsx';

/** What a grade shot is for, and the shots that there are. */
export const NextShot = () => (
  <>
    <p className="note">
      {phrase`Tap where the height of the ground was read and type it, over a datum of your own: what counts is how the heights differ. Three shots that are not in one line describe ground.`}
    </p>
    <Shots />
  </>
);
