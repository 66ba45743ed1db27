import { phrase } from '../../../phrases/phrase.ts';
import { CallsKey } from '../calls/CallsKey.tsx';

/** A boundary is drawn by hand, or worked out of its calls. */
export const NextBoundary = () => (
  <section aria-label={phrase`Next boundary`}>
    <p className="note">
      {phrase`Tap the corners of the lot, or have it drawn from the bearings and distances of a deed.`}
    </p>
    <CallsKey />
  </section>
);
