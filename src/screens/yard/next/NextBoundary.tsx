import { CallsKey } from '../calls/CallsKey.tsx';

/** A boundary is drawn by hand, or worked out of its calls. */
export const NextBoundary = () => (
  <section aria-label="Next boundary">
    <p className="note">
      Tap the corners of the lot, or have it drawn from the bearings and distances of a deed.
    </p>
    <CallsKey />
  </section>
);
